package org.washwright.document.edit;

import java.util.List;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** A change that can't be made without touching more of the text than it names; nothing was changed. */
public final class RefusedEdit extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> found;

    private RefusedEdit(List<Diagnostic> found) {
        super(found.get(0).toString(), null, false, false);
        this.found = found;
    }

    static RefusedEdit of(List<Diagnostic> found) {
        return new RefusedEdit(List.copyOf(found));
    }

    /** The pointer names nothing that could be changed so. */
    static RefusedEdit nowhere(String pointer) {
        return one(Message.EDIT_NOWHERE, new Place("-", 0, 0, pointer), pointer);
    }

    /** The text is written in a way that a form can't change. */
    static RefusedEdit tangled(Place place, String pointer) {
        return one(Message.EDIT_TANGLED, new Place(place.file(), place.line(), place.column(), pointer), pointer);
    }

    private static RefusedEdit one(Message message, Place place, String value) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(message, place, value);
        return new RefusedEdit(diagnostics.all());
    }

    /** Why, each with its place. */
    public List<Diagnostic> found() {
        return found;
    }
}

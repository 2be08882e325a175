package org.washwright.batch;

import java.util.List;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** A run that can't begin, or can't go on, with everything that stands in its way. */
public final class BatchRefusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> diagnostics;

    BatchRefusal(List<Diagnostic> diagnostics) {
        super("the run is refused: " + diagnostics);
        this.diagnostics = List.copyOf(diagnostics);
    }

    static BatchRefusal of(Message message, String file, Object... words) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(message, Place.ofFile(file), file, words);
        return new BatchRefusal(diagnostics.all());
    }

    /** What stands in its way. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}

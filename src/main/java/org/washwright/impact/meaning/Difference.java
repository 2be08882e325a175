package org.washwright.impact.meaning;

import java.util.List;
import org.washwright.document.Place;

/**
 * One part of an edition that differs.
 *
 * @param subject what kind of part
 * @param id its id in the later edition, or in the earlier one when it was taken out; a term's is {@code KIND/ID}
 * @param name what a reader calls it
 * @param what what became of it
 * @param answers whether answers may change by it
 * @param meaning whether the meaning hash differs by it
 * @param before where it stood; no file when it was not there or its place is not known
 * @param after where it stands, likewise
 * @param details what differs in it
 */
public record Difference(
        Subject subject,
        String id,
        String name,
        What what,
        boolean answers,
        boolean meaning,
        Place before,
        Place after,
        List<Detail> details) {

    /** No place that is known. */
    static final Place NOWHERE = Place.ofFile("");

    /** Keeps a copy. */
    public Difference {
        details = List.copyOf(details);
    }

    /** Where one finds it: its place now, or where it was. */
    public Place place() {
        return after.file().isEmpty() ? before : after;
    }

    /** True when it stands in another file than before. */
    public boolean movesFile() {
        return !before.file().isEmpty()
                && !after.file().isEmpty()
                && !before.file().equals(after.file());
    }
}

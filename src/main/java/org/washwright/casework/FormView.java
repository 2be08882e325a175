package org.washwright.casework;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.washwright.assessment.Wanted;

/**
 * The task form as the page draws it.
 *
 * @param title what was typed as title
 * @param titleError what is wrong with it, empty when nothing is
 * @param notes what was typed as notes
 * @param first what to find out first
 * @param later what else is open
 * @param sections the groups of attributes in the order of the page
 * @param errors everything wrong, with the field it stands at
 */
public record FormView(
        String title,
        String titleError,
        String notes,
        List<First> first,
        List<First> later,
        List<Section> sections,
        List<FieldError> errors) {

    /** Something wrong at a field. */
    public record FieldError(String field, String text) {}

    /** Something to find out: where it is said, what to ask, and what hangs on it. */
    public record First(String field, String question, String why) {}

    /** What not knowing something does, in words and as a style. */
    public record Note(String kind, String text) {
        static final Note NONE = new Note("", "");

        static Note of(Wanted.Note note) {
            return new Note(note.kind().name().toLowerCase(Locale.ROOT), note.brief());
        }

        /** True when the answer hangs on it. */
        public boolean matters() {
            return kind.equals("decides") || kind.equals("moves");
        }
    }

    /**
     * A group of attributes.
     *
     * @param key group key, also its anchor
     * @param title heading
     * @param label what one entry is called
     * @param list true when rows can be added
     * @param open whether there may be more than the rows
     * @param rows the rows; a single one when it is no list
     * @param model an empty row for adding one in the browser
     * @param error what is wrong with the whole group
     * @param note what hangs on the list as a whole, or why nothing does
     * @param given how much is said
     * @param wanted how many things matter now
     * @param shown false when it is folded away
     */
    public record Section(
            String key,
            String title,
            String label,
            boolean list,
            boolean open,
            List<Row> rows,
            Row model,
            String error,
            Note note,
            int given,
            int wanted,
            boolean shown) {}

    /**
     * One entry of a group.
     *
     * @param name what it is called
     * @param first what is asked first
     * @param more what is asked when it matters
     * @param shown true when what is asked further on is unfolded
     * @param hint what is folded away, in a few words
     */
    public record Row(String key, String name, List<Field> first, List<Field> more, boolean shown, String hint) {}

    /** A choice of a field; {@code also} are other words for it. */
    public record Choice(String id, String name, String definition, String also) {}

    /** A question tree played for a field: what it came to. */
    public record Played(String tree, String answers, String path, String proposal, boolean overruled) {}

    /** One attribute. */
    public record Field(
            String name,
            String label,
            String question,
            String type,
            String value,
            String unit,
            List<String> units,
            boolean unknown,
            boolean none,
            List<Choice> terms,
            List<String> any,
            String error,
            String tree,
            Optional<Played> played,
            Note note) {

        /** The name of the term chosen; empty when none is. */
        public String chosenName() {
            return terms.stream()
                    .filter(t -> t.id().equals(value))
                    .map(Choice::name)
                    .findFirst()
                    .orElse("");
        }

        /** True when the terms are too many for the eye. */
        public boolean longList() {
            return terms.size() > MANY;
        }

        /** True when something is said, or wrong. */
        boolean isSaid() {
            return !value.isEmpty() || none || !any.isEmpty() || played.isPresent() || !error.isEmpty();
        }

        /** The field's descriptions, for {@code aria-describedby}. */
        public String described() {
            return (error.isEmpty() ? "" : name + "-error ") + name + "-help"
                    + (note.text().isEmpty() ? "" : " " + name + "-note");
        }
    }

    private static final int MANY = 7;
}

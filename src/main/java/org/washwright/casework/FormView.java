package org.washwright.casework;

import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.rule.Edition;

/**
 * The task form as the page draws it.
 *
 * @param title what was typed as title
 * @param titleError what is wrong with it, empty when nothing is
 * @param notes what was typed as notes
 * @param sections the groups of attributes in the order of the page
 * @param errors everything wrong, with the field it stands at
 */
record FormView(String title, String titleError, String notes, List<Section> sections, List<FieldError> errors) {

    /** Something wrong at a field. */
    record FieldError(String field, String text) {}

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
     */
    record Section(
            String key,
            String title,
            String label,
            boolean list,
            boolean open,
            List<Row> rows,
            Row model,
            String error) {}

    /** One entry of a group. */
    record Row(String key, List<Field> fields) {}

    /** A choice of a field. */
    record Choice(String id, String name, String definition) {}

    /** A question tree played for a field: what it came to. */
    record Played(String tree, String answers, String path, String proposal, boolean overruled) {}

    /** One attribute. */
    record Field(
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
            Optional<Played> played) {

        /** The term chosen, as the field's template takes it. */
        public List<String> chosen() {
            return List.of(value);
        }
    }

    static FormView of(FormFields fields, Edition edition, List<Diagnostic> diagnostics) {
        return new FormDrawer(fields, edition, diagnostics).form();
    }
}

package org.washwright.editing.form;

import java.util.List;
import java.util.Optional;
import org.washwright.document.edit.Data;
import org.washwright.editing.Posted;
import org.washwright.editing.form.FileShape.Entry;
import org.washwright.problem.ProblemError;
import org.washwright.rulebook.TermUses;

/**
 * A file of entries as its page shows it.
 *
 * @param what what its entries are called
 * @param entries those that were looked for
 * @param all how many there are
 * @param q what was looked for
 * @param form the form that is open, if any
 * @param head the form of the file itself, if it has one
 */
record EntrySight(String what, List<Entry> entries, int all, String q, Optional<Form> form, Optional<Form> head) {

    /**
     * The form of an entry.
     *
     * @param pointer where it stands; empty for a new one and for the file itself
     * @param title what it is called
     * @param list the list a new entry is added to
     * @param fields its fields
     * @param uses rules that speak of it
     * @param isNew whether it is not there yet
     */
    record Form(
            String pointer, String title, String list, List<Field> fields, List<TermUses.Use> uses, boolean isNew) {}

    /** A field: what it is, what stands in it, what is wrong with it, and whether a heading begins there. */
    record Field(FieldSpec spec, String text, String source, String wrong, String heading) {

        /** Id of the list of words that it offers. */
        public String list() {
            return spec.choices().isEmpty() ? "" : "list" + spec.path().replace('/', '-');
        }

        /** Whether exactly one of the choices is right. */
        public boolean isSelect() {
            return spec.shape() == FieldSpec.Shape.TEXT && !spec.choices().isEmpty();
        }

        /** Whether what stands there is none of the choices. */
        public boolean isStrange() {
            return !text.isEmpty() && spec.choices().stream().noneMatch(c -> c.id().equals(text));
        }
    }

    /** Fields as the file says them, or as they were typed when that was refused. */
    static List<Field> fields(
            List<FieldSpec> specs, Data file, String pointer, Optional<Posted> typed, List<ProblemError> errors) {
        String[] heading = {""};
        return specs.stream()
                .map(spec -> {
                    FieldValues.Typed shown = typed.map(t -> FieldValues.typed(spec, t))
                            .orElseGet(() -> pointer.equals("-")
                                    ? new FieldValues.Typed("", "")
                                    : FieldValues.shown(spec, file.at(pointer + spec.path())));
                    String wrong = errors.stream()
                            .filter(e -> e.pointer().filter(spec.id()::equals).isPresent())
                            .map(e -> e.message() + " " + e.advice())
                            .findFirst()
                            .orElse("");
                    String begins = spec.group().equals(heading[0]) ? "" : spec.group();
                    heading[0] = spec.group();
                    return new Field(spec, shown.text(), shown.source(), wrong, begins);
                })
                .toList();
    }
}

package org.washwright.casework;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.washwright.assessment.Wanted;
import org.washwright.document.Diagnostic;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.Group;

/** Draws the form from what was typed, the edition's words, what is wrong and what hangs on what is not known. */
final class FormDrawer {
    private static final int ASKED_FIRST = 5;
    private static final String MODEL = "__n__";

    private final FormFields fields;
    private final Edition edition;
    private final Wanted wanted;
    private final FieldDrawer drawer;
    private final Map<String, String> wrong = new LinkedHashMap<>();

    FormDrawer(
            FormFields fields,
            Edition edition,
            List<Diagnostic> diagnostics,
            Wanted wanted,
            Map<String, String> units) {
        this.fields = fields;
        this.edition = edition;
        this.wanted = wanted;
        diagnostics.forEach(d -> wrong.merge(
                FormNames.ofPointer(d.place().pointer()),
                ProblemErrors.sentence(d.text()) + " " + ProblemErrors.sentence(d.advice()),
                (a, b) -> a + " " + b));
        this.drawer = new FieldDrawer(fields, edition, units, wrong, wanted);
    }

    FormView form() {
        List<FormView.Section> sections = new ArrayList<>();
        for (Group group : Group.values()) {
            sections.add(section(group));
        }
        if (!edition.declaredAttributes().isEmpty()) {
            sections.add(declared());
        }
        List<FormView.FieldError> errors = wrong.entrySet().stream()
                .map(e -> new FormView.FieldError(e.getKey(), FormNames.label(e.getKey()) + e.getValue()))
                .toList();
        List<FormView.First> first = wanted.first().stream()
                .map(f -> new FormView.First(FormNames.ofRef(f.ref()), f.question(), f.why()))
                .toList();
        int cut = Math.min(ASKED_FIRST, first.size());
        return new FormView(
                fields.first("title"),
                wrong.getOrDefault("title", ""),
                fields.first("notes"),
                first.subList(0, cut),
                first.subList(cut, first.size()),
                List.copyOf(sections),
                errors);
    }

    private FormView.Section section(Group group) {
        List<FormView.Row> rows = new ArrayList<>();
        if (group.isList()) {
            for (int i = 0; i < fields.rows(group); i++) {
                rows.add(row(group, group.key() + "." + i, FormNames.capital(group.label()) + " " + (i + 1)));
            }
        } else {
            rows.add(row(group, group.key(), ""));
        }
        FormView.Row model = row(group, group.key() + "." + MODEL, FormNames.capital(group.label()));
        return section(group.key(), group.heading(), group.label(), group.isList(), rows, model, note(group, rows));
    }

    private FormView.Section declared() {
        List<FormView.Field> declared = edition.declaredAttributes().values().stream()
                .map(a -> drawer.field(FormNames.DECLARED + "." + a.name(), a, ""))
                .toList();
        FormView.Row row = new FormView.Row(FormNames.DECLARED, "", declared, List.of(), false, "");
        return section(
                FormNames.DECLARED,
                "Asked by this rulebook",
                "attribute",
                false,
                List.of(row),
                row,
                FormView.Note.NONE);
    }

    private FormView.Section section(
            String key,
            String title,
            String label,
            boolean list,
            List<FormView.Row> rows,
            FormView.Row model,
            FormView.Note note) {
        List<FormView.Field> all = rows.stream()
                .flatMap(r -> Stream.concat(r.first().stream(), r.more().stream()))
                .toList();
        int given = (int) all.stream().filter(FormView.Field::isSaid).count();
        int matter = (int) all.stream().filter(f -> f.note().matters()).count() + (note.matters() ? 1 : 0);
        String error = wrong.getOrDefault(key, "");
        boolean shown = given > 0 || matter > 0 || !error.isEmpty();
        return new FormView.Section(
                key,
                title,
                label,
                list,
                fields.ticked(key + ".open"),
                List.copyOf(rows),
                model,
                error,
                note,
                given,
                matter,
                shown);
    }

    /** What is said of a group as a whole: of an open list, or of one that no rule reads. */
    private FormView.Note note(Group group, List<FormView.Row> rows) {
        if (wanted.notes().isEmpty()) {
            return FormView.Note.NONE;
        }
        if (group.appliesOnlyWhenGiven()) {
            return new FormView.Note("settled", "Leave it empty when you have none in mind.");
        }
        FormView.Note own = wanted.note(group.key()).map(FormView.Note::of).orElse(FormView.Note.NONE);
        List<FormView.Field> open = rows.stream()
                .flatMap(r -> Stream.concat(r.first().stream(), r.more().stream()))
                .filter(f -> !f.note().text().isEmpty())
                .toList();
        boolean silent = own.text().isEmpty() && (group.isList() ? rows.isEmpty() : !open.isEmpty());
        if (silent && open.stream().noneMatch(f -> f.note().matters())) {
            boolean unread = open.stream().allMatch(f -> f.note().kind().equals("unread"));
            return unread && !group.isList()
                    ? new FormView.Note("unread", "No rule of this rulebook reads what is open here.")
                    : new FormView.Note("settled", "Nothing waits for it as the task stands.");
        }
        return own;
    }

    private FormView.Row row(Group group, String prefix, String name) {
        List<FormView.Field> first = new ArrayList<>();
        List<FormView.Field> more = new ArrayList<>();
        for (Attribute a : group.attributes()) {
            if (!a.computed()) {
                (a.isEssential() ? first : more)
                        .add(drawer.field(prefix + "." + a.name(), a, group.factType() + "." + a.name()));
            }
        }
        boolean touched = Stream.concat(first.stream(), more.stream()).anyMatch(FormView.Field::isSaid);
        long matter = more.stream().filter(f -> f.note().matters()).count();
        // Of an entry of which nothing is said yet, what is asked first comes first.
        boolean shown = more.stream().anyMatch(FormView.Field::isSaid)
                || (touched && more.stream().anyMatch(f -> f.note().kind().equals("decides")));
        return new FormView.Row(prefix, name, List.copyOf(first), List.copyOf(more), shown, hint(more, matter));
    }

    private static String hint(List<FormView.Field> more, long matter) {
        if (matter > 0) {
            return matter == 1 ? "one of these matters now" : matter + " of these matter now";
        }
        String names = String.join(
                ", ", more.stream().limit(3).map(FormView.Field::label).toList());
        return names + (more.size() > 3 ? " and " + (more.size() - 3) + " more" : "");
    }
}

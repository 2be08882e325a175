package org.washwright.casework;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.engine.Words;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/** Draws the form from what was typed, the edition's words and what is wrong. */
final class FormDrawer {
    private final FormFields fields;
    private final Edition edition;
    private final Map<String, String> wrong = new LinkedHashMap<>();

    FormDrawer(FormFields fields, Edition edition, List<Diagnostic> diagnostics) {
        this.fields = fields;
        this.edition = edition;
        diagnostics.forEach(d -> wrong.merge(
                field(d.place().pointer()),
                ProblemErrors.sentence(d.text()) + " " + ProblemErrors.sentence(d.advice()),
                (a, b) -> a + " " + b));
    }

    FormView form() {
        List<FormView.Section> sections = new ArrayList<>();
        for (Group group : Group.values()) {
            sections.add(section(group, group.heading()));
        }
        if (!edition.declaredAttributes().isEmpty()) {
            List<FormView.Field> declared = edition.declaredAttributes().values().stream()
                    .map(a -> field("attributes." + a.name(), a, ""))
                    .toList();
            FormView.Row row = new FormView.Row("attributes", declared);
            sections.add(new FormView.Section("attributes", "More", "attribute", false, false, List.of(row), row, ""));
        }
        List<FormView.FieldError> errors = wrong.entrySet().stream()
                .map(e -> new FormView.FieldError(e.getKey(), label(e.getKey()) + e.getValue()))
                .toList();
        return new FormView(
                fields.first("title"),
                wrong.getOrDefault("title", ""),
                fields.first("notes"),
                List.copyOf(sections),
                errors);
    }

    private FormView.Section section(Group group, String title) {
        List<FormView.Row> rows = new ArrayList<>();
        if (group.isList()) {
            for (int i = 0; i < fields.rows(group); i++) {
                rows.add(row(group, group.key() + "." + i));
            }
        } else {
            rows.add(row(group, group.key()));
        }
        return new FormView.Section(
                group.key(),
                title,
                group.label(),
                group.isList(),
                fields.ticked(group.key() + ".open"),
                List.copyOf(rows),
                row(group, group.key() + ".__n__"),
                wrong.getOrDefault(group.key(), ""));
    }

    private FormView.Row row(Group group, String prefix) {
        return new FormView.Row(
                prefix,
                group.attributes().stream()
                        .filter(a -> !a.computed())
                        .map(a -> field(prefix + "." + a.name(), a, group.factType() + "." + a.name()))
                        .toList());
    }

    private FormView.Field field(String name, Attribute attribute, String proposed) {
        FieldType type = attribute.type();
        boolean number = type instanceof FieldType.NumberType;
        List<String> usual = number ? FormUnits.of(attribute) : List.of("");
        String unit = fields.first(name + ".unit");
        String value = fields.first(name);
        return new FormView.Field(
                name,
                attribute.label(),
                attribute.question(),
                number ? "number" : type instanceof FieldType.TermType t ? (t.isFlag() ? "flag" : "term") : "text",
                value,
                unit.isEmpty() ? usual.get(0) : unit,
                number ? FormUnits.of(attribute, unit) : List.of(),
                fields.ticked(name + ".unknown"),
                fields.ticked(name + ".none") || value.equals(FormDocument.NOT_APPLICABLE),
                choices(type, value),
                fields.all(name + ".any"),
                wrong.getOrDefault(name, ""),
                tree(proposed),
                played(name, type));
    }

    private List<FormView.Choice> choices(FieldType type, String value) {
        if (!(type instanceof FieldType.TermType t)) {
            return List.of();
        }
        if (t.isFlag()) {
            return List.of(new FormView.Choice("yes", "yes", ""), new FormView.Choice("no", "no", ""));
        }
        List<FormView.Choice> choices = new ArrayList<>();
        edition.catalogue().ofKind(t.kind()).values().stream()
                .filter(term -> !term.isWithdrawn())
                .forEach(term -> choices.add(new FormView.Choice(term.id(), term.name(), term.definition())));
        if (!value.isEmpty()
                && !value.equals(FormDocument.NOT_APPLICABLE)
                && choices.stream().noneMatch(c -> c.id().equals(value))) {
            choices.add(new FormView.Choice(value, value + " (not in this edition)", ""));
        }
        return choices;
    }

    private String tree(String proposed) {
        return edition.trees().values().stream()
                .filter(t -> t.proposes().equals(proposed))
                .map(QuestionTree::id)
                .findFirst()
                .orElse("");
    }

    private Optional<FormView.Played> played(String name, FieldType type) {
        QuestionTree tree = edition.trees().get(fields.first(name + ".tree"));
        if (tree == null) {
            return Optional.empty();
        }
        Vocabulary.Played played = tree.play(FormDocument.answers(fields, name));
        boolean overruled =
                !fields.first(name).isEmpty() || !fields.all(name + ".any").isEmpty() || fields.ticked(name + ".none");
        return Optional.of(new FormView.Played(
                tree.id(),
                fields.first(name + ".answers"),
                played.path(),
                played.proposal()
                        .map(v -> new Words(edition.catalogue()).value(v, type, Words.GIVEN))
                        .orElse("nothing yet"),
                overruled));
    }

    /** The field a place in the document belongs to. */
    private String field(String pointer) {
        String name = pointer.isEmpty() ? "title" : pointer.substring(1).replace('/', '.');
        for (Group group : Group.values()) {
            name = name.replaceFirst("^" + group.key() + "\\.list(\\.|$)", group.key() + "$1");
        }
        String[] parts = name.split("\\.");
        boolean list = Group.byKey(parts[0]).filter(Group::isList).isPresent();
        int depth = list ? 3 : parts[0].equals("title") || parts[0].equals("notes") ? 1 : 2;
        if (list && parts.length == 2 && parts[1].matches("[0-9]+")) {
            return name + "."
                    + Group.byKey(parts[0]).orElseThrow().attributes().get(0).name();
        }
        return String.join(".", List.of(parts).subList(0, Math.min(depth, parts.length)));
    }

    /** What a reader calls a field, with its row. */
    private String label(String name) {
        String[] parts = name.split("\\.");
        Optional<Group> group = Group.byKey(parts[0]);
        if (group.isEmpty() || parts.length == 1) {
            return "";
        }
        String row = group.get().isList() && parts[1].matches("[0-9]+") ? " " + (Integer.parseInt(parts[1]) + 1) : "";
        String attribute = group.get()
                .attribute(parts[parts.length - 1])
                .map(a -> ", " + a.label())
                .orElse("");
        String start = group.get().label();
        return start.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + start.substring(1) + row + attribute + ": ";
    }
}

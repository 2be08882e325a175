package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Wanted;
import org.washwright.engine.Words;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Vocabulary;

/** Draws one field of the form. */
final class FieldDrawer {
    private final FormFields fields;
    private final Edition edition;
    private final Map<String, String> units;
    private final Map<String, String> wrong;
    private final Wanted wanted;

    /** Draws with what was typed, the edition's words, units chosen before, and errors by field. */
    FieldDrawer(
            FormFields fields, Edition edition, Map<String, String> units, Map<String, String> wrong, Wanted wanted) {
        this.fields = fields;
        this.edition = edition;
        this.units = units;
        this.wrong = wrong;
        this.wanted = wanted;
    }

    /** A field; {@code proposed} is how question trees call its attribute. */
    FormView.Field field(String name, Attribute attribute, String proposed) {
        FieldType type = attribute.type();
        boolean number = type instanceof FieldType.NumberType;
        String typed = fields.first(name + ".unit");
        String value = fields.first(name);
        Optional<String> chosen = Optional.ofNullable(units.get(FormNames.attribute(name.replace("__n__", "0"))));
        String unit = !number ? "" : typed.isEmpty() ? FormUnits.preferred(attribute, chosen) : typed;
        return new FormView.Field(
                name,
                attribute.label(),
                attribute.question(),
                number ? "number" : type instanceof FieldType.TermType t ? (t.isFlag() ? "flag" : "term") : "text",
                value,
                unit,
                number ? FormUnits.of(attribute, unit) : List.of(),
                fields.ticked(name + ".unknown"),
                fields.ticked(name + ".none") || value.equals(FormDocument.NOT_APPLICABLE),
                choices(type, value),
                fields.all(name + ".any"),
                wrong.getOrDefault(name, ""),
                tree(proposed),
                played(name, type),
                wanted.note(FormNames.ref(name)).map(FormView.Note::of).orElse(FormView.Note.NONE));
    }

    private List<FormView.Choice> choices(FieldType type, String value) {
        if (!(type instanceof FieldType.TermType t)) {
            return List.of();
        }
        if (t.isFlag()) {
            return List.of(
                    new FormView.Choice(FieldType.YES, "yes", "", ""), new FormView.Choice(FieldType.NO, "no", "", ""));
        }
        List<FormView.Choice> choices = new ArrayList<>();
        edition.catalogue().ofKind(t.kind()).values().stream()
                .filter(term -> !term.isWithdrawn())
                .sorted(java.util.Comparator.comparing(term -> term.name()))
                .forEach(term -> choices.add(new FormView.Choice(
                        term.id(), term.name(), term.definition(), String.join(", ", term.synonyms()))));
        if (!value.isEmpty()
                && !value.equals(FormDocument.NOT_APPLICABLE)
                && choices.stream().noneMatch(c -> c.id().equals(value))) {
            choices.add(new FormView.Choice(value, value + " (not in this edition)", "", ""));
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
}

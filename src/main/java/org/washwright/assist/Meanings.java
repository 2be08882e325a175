package org.washwright.assist;

import java.util.Map;
import java.util.TreeMap;
import org.washwright.rule.Contact;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.ProcessFigures;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** What the words of the rule language mean. Source: docs/rule-language.md. */
final class Meanings {

    /** Annotations of a rule. */
    static final Map<String, String> ANNOTATIONS = new TreeMap<>(Map.of(
            "id", "Required, unique: letters, digits and hyphens.",
            "title", "Takes the place of the rule's name as its title.",
            "basis", "Required: where the rule comes from.",
            "source", "ids of edition.yaml with the place in them, joined by a semicolon.",
            "since", "From when the rule holds, free text.",
            "note", "A remark, free text."));

    /** Words of the language. */
    static final Map<String, String> WORDS = Map.of(
            "rule", "Begins a rule; its name stands behind in quotes.",
            "when", "Conditions follow, one pattern a line, at most six.",
            "then", "Consequences follow.",
            "end", "The rule ends here.",
            "not", "Holds only if nothing can match the pattern behind it, what is not known included.",
            "exists", "Holds when something matches the pattern behind it.",
            "in", "Is one of these terms.",
            "after", "Somewhere behind this stage.",
            "before", "Somewhere before this stage.",
            "between", "Between two stages.");

    private Meanings() {}

    /** What a fact type stands for. */
    static String factType(String type) {
        return Group.byFactType(type)
                .map(g -> g.isList()
                        ? "Of the task: " + g.heading() + ", at most " + g.cap() + "."
                        : "Of the task: " + g.heading() + ".")
                .or(() -> Contact.byFactType(type)
                        .map(c -> "What physics says of a process " + c.preposition() + " a "
                                + c.group().label() + "; join it to both."))
                .orElse(
                        switch (type) {
                            case FactTypes.PROCESS -> "A cleaning process of the catalogue, with its properties.";
                            case FactTypes.STAGE -> "A stage of the composed line; the rule runs over every line.";
                            case FactTypes.CONCLUSION -> "Something that another rule concluded.";
                            case FactTypes.ATTRIBUTE -> "An attribute that this edition declares.";
                            default -> "";
                        });
    }

    /** What a field holds, and how one asks for it. */
    static String field(FactType type, Field field) {
        String holds = holds(field);
        String question = attribute(type, field).isEmpty() ? "" : " " + attribute(type, field);
        return holds + question;
    }

    private static String holds(Field field) {
        if (field.type() instanceof FieldType.NumberType n) {
            return "A " + n.dimension().label() + ", such as " + n.dimension().example() + ".";
        }
        if (field.type() instanceof FieldType.TermType t) {
            return t.isFlag() ? "Yes or no." : "A term of kind " + t.kind() + ".";
        }
        return field.type() instanceof FieldType.CodeType
                ? "A code; rules read what is computed of it."
                : "Another fact.";
    }

    /** The question by which one asks for a field; empty when nobody asks. */
    private static String attribute(FactType type, Field field) {
        if (!field.property().isEmpty()) {
            return "";
        }
        return Group.byFactType(type.name())
                .flatMap(g -> g.attribute(field.name()))
                .map(Attribute::question)
                .or(() -> Contact.byFactType(type.name())
                        .flatMap(c -> c.attributes().stream()
                                .filter(a -> a.name().equals(field.name()))
                                .findFirst())
                        .map(Attribute::question))
                .or(() -> ProcessFigures.ALL.stream()
                        .filter(a -> type.name().equals(FactTypes.PROCESS)
                                && a.name().equals(field.name()))
                        .map(Attribute::question)
                        .findFirst())
                .orElse("");
    }
}

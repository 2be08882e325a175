package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.catalogue.Term;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Says what terms, sources and criteria of an edition mean. */
final class TermHelp {

    private static final int DIGITS = 4;

    private final Edition words;

    TermHelp(Edition words) {
        this.words = words;
    }

    /** A term by kind and id. */
    Optional<Help> term(String kind, String id) {
        if (kind.equals(FactTypes.LINE_STAGE)) {
            return term("stage", id).or(() -> term("process", id));
        }
        return words.catalogue().term(kind, id).map(this::term);
    }

    /** Terms of any kind with this id. */
    Optional<Help> any(String id) {
        List<Help> all = words.catalogue().terms().keySet().stream()
                .flatMap(kind -> term(kind, id).stream())
                .toList();
        if (all.size() < 2) {
            return all.stream().findFirst();
        }
        List<String> lines = new ArrayList<>();
        all.forEach(h -> lines.add("As " + h.kind() + ": " + h.title() + ". "
                + h.lines().stream().findFirst().orElse("")));
        return Optional.of(Help.of(id, "several terms", lines));
    }

    private Help term(Term term) {
        List<String> lines = new ArrayList<>();
        lines.add(term.definition());
        if (!term.synonyms().isEmpty()) {
            lines.add("Also called " + String.join(", ", term.synonyms()) + ".");
        }
        if (term.isWithdrawn()) {
            lines.add("Withdrawn; write " + term.replacedBy() + " instead.");
        }
        Optional.ofNullable(words.catalogue().cautions().get(term.id()))
                .filter(c -> term.kind().equals("hazard"))
                .ifPresent(lines::add);
        Kind kind = words.catalogue().kinds().get(term.kind());
        Map<String, Property> properties = kind == null ? Map.of() : kind.properties();
        term.properties().forEach((id, value) -> {
            Property property = properties.get(id);
            if (property != null) {
                lines.add(property.label() + ": " + value(value, property.type()) + ".");
            }
        });
        return Help.of(term.name(), kind == null ? term.kind() : kind.name(), lines);
    }

    private String value(Value value, FieldType type) {
        if (value instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return Quantities.write(n.span(), t.dimension(), DIGITS);
        }
        String kind = type instanceof FieldType.TermType t ? t.kind() : "";
        if (value instanceof Value.OneOf o) {
            return String.join(
                    " or ", o.terms().stream().map(id -> name(kind, id)).toList());
        }
        if (value instanceof Value.AllOf a) {
            return String.join(
                    " and ", a.terms().stream().map(id -> name(kind, id)).toList());
        }
        return value.knowledge();
    }

    private String name(String kind, String id) {
        return words.catalogue().name(kind, id);
    }

    /** A source by its id. */
    Optional<Help> source(String id) {
        return Optional.ofNullable(words.sources().get(id))
                .map(s -> Help.of(
                        s.title(),
                        "source",
                        List.of(
                                s.year() > 0 ? String.valueOf(s.year()) + ". " + s.locator() : s.locator(),
                                s.seen() ? "Seen." : "Cited from memory.")));
    }

    /** A criterion by its id. */
    Optional<Help> criterion(String id) {
        return words.grading().areas().stream()
                .flatMap(a -> a.criteria().stream()
                        .filter(c -> c.id().equals(id))
                        .map(c -> Help.of(c.name(), "criterion", List.of("Area: " + a.name() + "."))))
                .findFirst();
    }

    /** A declared attribute by its id. */
    Optional<Help> attribute(String id) {
        return Optional.ofNullable(words.catalogue().attributes().get(id))
                .map(a -> Help.of(a.label(), "attribute of this edition", List.of(a.question())));
    }
}

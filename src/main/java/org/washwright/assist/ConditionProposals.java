package org.washwright.assist;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.Rule;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** Proposes what conditions are made of: patterns, fields, operators and literals. */
final class ConditionProposals {

    private static final String FIELD = "field";

    private final Edition words;
    private final TermProposals terms;

    ConditionProposals(Edition words) {
        this.words = words;
        this.terms = new TermProposals(words);
    }

    List<Proposal> patterns(Situation.PatternStart at) {
        List<Proposal> out = new ArrayList<>();
        if (at.patterns() >= Rule.MAX_PATTERNS && !at.signed() && !at.named()) {
            return List.of(keyword("then\n  ", "then", "What follows when all of this holds."));
        }
        for (String type : types()) {
            String what = Meanings.factType(type);
            if (!at.signed() && !at.named()) {
                String name = freeName(type, at.bounds());
                out.add(Proposal.of(name + " : " + type, name + " : " + type + "(", "pattern", "", what));
            }
            out.add(Proposal.of(type, type + "(", "pattern", "", what));
        }
        if (!at.signed() && !at.named()) {
            out.add(keyword("not ", "not", "Holds when nothing can match the pattern behind it."));
            out.add(keyword("exists ", "exists", "Holds when something matches, whatever it is."));
            if (at.patterns() > 0) {
                out.add(0, keyword("then\n  ", "then", "What follows when all of this holds."));
            }
        }
        return out;
    }

    /** Fact types as rules write them. */
    private List<String> types() {
        Set<String> names = new LinkedHashSet<>();
        for (Group group : Group.values()) {
            names.add(group.factType());
        }
        words.types().byName().keySet().stream().filter(n -> !n.contains("/")).forEach(names::add);
        if (!words.catalogue().attributes().isEmpty()) {
            names.add(FactTypes.ATTRIBUTE);
        }
        return List.copyOf(names);
    }

    private static String freeName(String type, List<Bound> bounds) {
        String base = "$" + type.substring(0, 1).toLowerCase(Locale.ROOT);
        String name = base;
        for (int i = 2; isTaken(name, bounds); i++) {
            name = base + i;
        }
        return name;
    }

    private static boolean isTaken(String name, List<Bound> bounds) {
        return bounds.stream().anyMatch(b -> b.name().equals(name));
    }

    private static Proposal keyword(String insert, String label, String explanation) {
        return Proposal.of(label, insert, "word", "", explanation);
    }

    List<Proposal> fields(Situation.FieldPlace at) {
        if (at.pattern().needsId()) {
            return List.of(Proposal.of(
                    "id", "id", FIELD, "which attribute", "The id of an attribute that this edition declares."));
        }
        FactType type = at.pattern().type().orElse(null);
        if (type == null) {
            return List.of();
        }
        return type.fields().values().stream()
                .filter(f -> !(f.type() instanceof FieldType.CodeType))
                .filter(f -> !(f.type() instanceof FieldType.FactType)
                        || !facts(type, f, at.bounds()).isEmpty())
                .map(f -> Proposal.of(f.name(), f.name(), FIELD, f.label(), Meanings.field(type, f)))
                .toList();
    }

    List<Proposal> operators(Situation.OperatorPlace at) {
        if (at.pattern().needsId()) {
            return List.of(operator("==", "is"));
        }
        FieldType type = at.field().map(Field::type).orElse(null);
        if (type instanceof FieldType.NumberType) {
            return List.of(
                    operator("<", "below"),
                    operator("<=", "at most"),
                    operator(">", "above"),
                    operator(">=", "at least"),
                    operator("==", "is"),
                    operator("!=", "is not"));
        }
        if (type instanceof FieldType.TermType t) {
            List<Proposal> out = new ArrayList<>(List.of(operator("==", "is"), operator("!=", "is not")));
            if (!t.isFlag()) {
                out.add(Proposal.of("in", "in (", "operator", "is one of", ""));
                out.add(Proposal.of("not in", "not in (", "operator", "is none of", ""));
            }
            return out;
        }
        return type instanceof FieldType.FactType ? List.of(operator("==", "is")) : List.of();
    }

    private static Proposal operator(String sign, String words) {
        return Proposal.of(sign, sign + " ", "operator", words, "");
    }

    List<Proposal> literals(Situation.LiteralPlace at, Range range) {
        if (at.pattern().attribute() && at.field().isEmpty()) {
            return declared(range);
        }
        Field field = at.field().orElse(null);
        FactType type = at.pattern().type().orElse(null);
        if (field == null || type == null) {
            return List.of();
        }
        if (field.type() instanceof FieldType.FactType) {
            return range.quoted() ? List.of() : facts(type, field, at.bounds());
        }
        List<Proposal> out = new ArrayList<>();
        if (field.type() instanceof FieldType.NumberType number) {
            out.addAll(QuantityProposals.of(number.dimension(), range));
        } else if (field.type() instanceof FieldType.TermType term) {
            out.addAll(term.isFlag() ? TermProposals.flags(range) : terms.ofKind(term.kind(), range));
        }
        if (!range.quoted() && !at.op().endsWith("in")) {
            out.addAll(Named.of(field.type(), at.bounds()));
        }
        return out;
    }

    private List<Proposal> declared(Range range) {
        return words.catalogue().attributes().entrySet().stream()
                .map(e -> Proposal.of(
                        e.getKey(),
                        range.quote(e.getKey()),
                        "attribute",
                        e.getValue().label(),
                        e.getValue().question()))
                .toList();
    }

    /** Facts bound above that a field which holds a fact can name. */
    private static List<Proposal> facts(FactType type, Field field, List<Bound> bounds) {
        Optional<String> wanted = field.name().equals("process")
                ? Optional.of(FactTypes.PROCESS)
                : Contact.byFactType(type.name())
                        .filter(c -> c.field().equals(field.name()))
                        .map(c -> c.group().factType());
        return bounds.stream()
                .filter(b -> b.field().isEmpty() && !b.name().isEmpty())
                .filter(b -> wanted.isPresent()
                        ? b.isFactOf(wanted.get())
                        : !b.type().name().equals(FactTypes.STAGE))
                .map(b -> Proposal.of(b.name(), b.name(), "variable", b.type().name(), "The fact that is bound above."))
                .toList();
    }
}

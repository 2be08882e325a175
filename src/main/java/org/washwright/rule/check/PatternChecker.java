package org.washwright.rule.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Condition;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.Op;
import org.washwright.rule.Pattern;
import org.washwright.rule.Sign;
import org.washwright.rule.syntax.SyntaxConstraint;
import org.washwright.rule.syntax.SyntaxConstraint.Operand;
import org.washwright.rule.syntax.SyntaxPattern;

/** Gives the patterns of one rule their meaning: fact types, fields, literals of the right dimension or kind. */
final class PatternChecker {

    private final Terms terms;
    private final Diagnostics diagnostics;
    private final Scope scope;
    private final ComparisonChecker comparisons;

    PatternChecker(Terms terms, Diagnostics diagnostics, Scope scope) {
        this.terms = terms;
        this.diagnostics = diagnostics;
        this.scope = scope;
        this.comparisons = new ComparisonChecker(terms, diagnostics, scope);
    }

    /** Checks the pattern that stands at {@code index}; empty after an error. */
    Optional<Pattern> check(SyntaxPattern pattern, int index) {
        Optional<FactType> type = type(pattern);
        if (type.isEmpty()) {
            return Optional.empty();
        }
        boolean positive = pattern.sign() == Sign.POSITIVE;
        boolean sound = pattern.variable().isEmpty() || name(pattern, index, type.get());
        List<Condition> parts = new ArrayList<>();
        for (SyntaxConstraint constraint : pattern.constraints()) {
            Optional<Condition> part = condition(constraint, type.get(), index, positive, false);
            sound &= part.isPresent();
            part.filter(p -> !p.equals(Condition.ALWAYS)).ifPresent(parts::add);
        }
        return sound
                ? Optional.of(new Pattern(pattern.sign(), type.get(), new Condition.All(parts)))
                : Optional.empty();
    }

    /** Binds the variable of a pattern; false after an error. */
    private boolean name(SyntaxPattern pattern, int index, FactType type) {
        if (pattern.sign() != Sign.POSITIVE) {
            diagnostics.add(
                    Message.REFUSED,
                    pattern.place(),
                    pattern.variable(),
                    "a variable on \"not\" or \"exists\"",
                    "Leave it out: such a pattern matches no single fact");
            return false;
        }
        if (!scope.bind(pattern.variable(), new Scope.Bound(index, type, Optional.empty()))) {
            diagnostics.add(Message.DUPLICATE_VARIABLE, pattern.place(), pattern.variable());
            return false;
        }
        return true;
    }

    private Optional<FactType> type(SyntaxPattern pattern) {
        if (!pattern.type().equals(FactTypes.ATTRIBUTE)) {
            Optional<FactType> type = pattern.type().contains("/")
                    ? Optional.empty()
                    : terms.types().type(pattern.type());
            if (type.isEmpty()) {
                List<String> known = new ArrayList<>(terms.types().byName().keySet());
                known.removeIf(n -> n.contains("/"));
                known.add(FactTypes.ATTRIBUTE);
                diagnostics.add(
                        Message.UNKNOWN_TYPE, pattern.place(), pattern.type(), Similar.advice(pattern.type(), known));
            }
            return type;
        }
        for (SyntaxConstraint c : pattern.constraints()) {
            if (c instanceof SyntaxConstraint.Compare compare && isDeclaredId(compare)) {
                String id = ((Operand.Quoted) compare.operands().get(0)).text();
                Optional<FactType> type = terms.types().type(FactTypes.declared(id));
                if (type.isEmpty()) {
                    diagnostics.add(
                            Message.UNKNOWN_REFERENCE,
                            compare.place(),
                            id,
                            "attribute that this edition declares",
                            Similar.advice(id, terms.catalogue().attributes().keySet()));
                }
                return type;
            }
        }
        diagnostics.add(
                Message.BAD_CONSTRAINT, pattern.place(), FactTypes.ATTRIBUTE, "it needs id == \"...\" as a constraint");
        return Optional.empty();
    }

    private static boolean isDeclaredId(SyntaxConstraint.Compare c) {
        return c.field().equals("id") && c.op() == Op.EQ && c.operands().get(0) instanceof Operand.Quoted;
    }

    private Optional<Condition> condition(
            SyntaxConstraint constraint, FactType type, int index, boolean positive, boolean alternative) {
        if (constraint instanceof SyntaxConstraint.All all) {
            return parts(all.parts(), type, index, positive, alternative).map(PatternChecker::all);
        }
        if (constraint instanceof SyntaxConstraint.Any any) {
            return parts(any.parts(), type, index, positive, true).map(Condition.Any::new);
        }
        if (constraint instanceof SyntaxConstraint.Bind bind) {
            return bind(bind, type, index, positive, alternative);
        }
        SyntaxConstraint.Compare compare = (SyntaxConstraint.Compare) constraint;
        if (type.name().startsWith(FactTypes.ATTRIBUTE + "/") && compare.field().equals("id")) {
            if (isDeclaredId(compare) && !alternative) {
                return Optional.of(Condition.ALWAYS);
            }
            diagnostics.add(
                    Message.BAD_CONSTRAINT, compare.place(), "id", "the id of an attribute is compared once, with ==");
            return Optional.empty();
        }
        return field(compare.field(), type, compare.place()).flatMap(f -> comparisons.compare(compare, f));
    }

    /** All of these, without what always holds: a binding asks for nothing and leaves no trace in the meaning of a rule. */
    private static Condition all(List<Condition> parts) {
        List<Condition> asking =
                parts.stream().filter(c -> !c.equals(Condition.ALWAYS)).toList();
        return asking.size() == 1 ? asking.get(0) : new Condition.All(asking);
    }

    private Optional<List<Condition>> parts(
            List<SyntaxConstraint> parts, FactType type, int index, boolean positive, boolean alternative) {
        List<Condition> out = new ArrayList<>();
        boolean sound = true;
        for (SyntaxConstraint part : parts) {
            Optional<Condition> c = condition(part, type, index, positive, alternative);
            sound &= c.isPresent();
            c.ifPresent(out::add);
        }
        return sound ? Optional.of(out) : Optional.empty();
    }

    private Optional<Condition> bind(
            SyntaxConstraint.Bind bind, FactType type, int index, boolean positive, boolean alternative) {
        if (alternative) {
            diagnostics.add(Message.BINDING_UNDER_OR, bind.place(), bind.variable());
            return Optional.empty();
        }
        Optional<Field> field = field(bind.field(), type, bind.place());
        if (field.isEmpty()) {
            return Optional.empty();
        }
        if (!positive) {
            diagnostics.add(
                    Message.REFUSED,
                    bind.place(),
                    bind.variable(),
                    "a variable inside \"not\" or \"exists\"",
                    "Compare with a pattern above instead");
            return Optional.empty();
        }
        if (!scope.bind(bind.variable(), new Scope.Bound(index, type, field))) {
            diagnostics.add(Message.DUPLICATE_VARIABLE, bind.place(), bind.variable());
            return Optional.empty();
        }
        return Optional.of(Condition.ALWAYS);
    }

    private Optional<Field> field(String name, FactType type, Place place) {
        Optional<Field> field = type.field(name);
        if (field.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_FIELD,
                    place,
                    name,
                    "facts of type " + type.name(),
                    Similar.advice(name, type.fields().keySet()));
        }
        return field;
    }
}

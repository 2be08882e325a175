package org.washwright.rule.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
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
import org.washwright.task.FieldType;

/** Gives the patterns of one rule their meaning: fact types, fields, literals of the right dimension or kind. */
final class PatternChecker {

    private final Terms terms;
    private final Diagnostics diagnostics;
    private final Scope scope;

    PatternChecker(Terms terms, Diagnostics diagnostics, Scope scope) {
        this.terms = terms;
        this.diagnostics = diagnostics;
        this.scope = scope;
    }

    /** Checks the pattern that stands at {@code index}; empty after an error. */
    Optional<Pattern> check(SyntaxPattern pattern, int index) {
        Optional<FactType> type = type(pattern);
        if (type.isEmpty()) {
            return Optional.empty();
        }
        boolean positive = pattern.sign() == Sign.POSITIVE;
        if (!pattern.variable().isEmpty()) {
            if (!positive) {
                diagnostics.add(
                        Message.REFUSED,
                        pattern.place(),
                        pattern.variable(),
                        "a variable on \"not\" or \"exists\"",
                        "Leave it out: such a pattern matches no single fact");
            } else if (!scope.bind(pattern.variable(), new Scope.Bound(index, type.get(), Optional.empty()))) {
                diagnostics.add(Message.DUPLICATE_VARIABLE, pattern.place(), pattern.variable());
            }
        }
        List<Condition> parts = new ArrayList<>();
        boolean sound = true;
        for (SyntaxConstraint constraint : pattern.constraints()) {
            Optional<Condition> part = condition(constraint, type.get(), index, positive, false);
            sound &= part.isPresent();
            part.filter(p -> !p.equals(Condition.ALWAYS)).ifPresent(parts::add);
        }
        return sound
                ? Optional.of(new Pattern(pattern.sign(), type.get(), new Condition.All(parts)))
                : Optional.empty();
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
            return parts(all.parts(), type, index, positive, alternative).map(Condition.All::new);
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
        return field(compare.field(), type, compare.place()).flatMap(f -> compare(compare, f));
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

    private Optional<Condition> compare(SyntaxConstraint.Compare compare, Field field) {
        Operand first = compare.operands().get(0);
        if (first instanceof Operand.Variable v) {
            return variable(compare, field, v);
        }
        if (field.type() instanceof FieldType.NumberType number) {
            return number(compare, field, number.dimension(), first);
        }
        if (field.type() instanceof FieldType.TermType term) {
            return terms(compare, field, term);
        }
        return mismatch(compare, field, "a literal", "Compare it with a bound fact, for instance subject == $m");
    }

    private Optional<Condition> number(
            SyntaxConstraint.Compare compare, Field field, Dimension dimension, Operand operand) {
        if (compare.op() == Op.IN || compare.op() == Op.NOT_IN) {
            return mismatch(compare, field, "a list", "Use < and > with quantities");
        }
        String text;
        if (operand instanceof Operand.Quoted q) {
            text = q.text();
        } else if (operand instanceof Operand.Plain p && dimension.isPlain()) {
            text = p.number();
        } else if (operand instanceof Operand.Plain p) {
            diagnostics.add(Message.MISSING_UNIT, compare.place(), p.number(), "\"" + dimension.example() + "\"");
            return Optional.empty();
        } else {
            return mismatch(compare, field, "yes or no", "Write for instance \"" + dimension.example() + "\"");
        }
        return Quantities.read(text, dimension, compare.place(), diagnostics)
                .map(si -> new Condition.Test(field, compare.op(), new Condition.Operand.Number(si)));
    }

    private Optional<Condition> terms(SyntaxConstraint.Compare compare, Field field, FieldType.TermType type) {
        if (compare.op().isOrder()) {
            return mismatch(compare, field, "something larger or smaller", "Use ==, !=, in or not in");
        }
        TreeSet<String> ids = new TreeSet<>();
        for (Operand operand : compare.operands()) {
            if (operand instanceof Operand.Flag f && type.isFlag()) {
                ids.add(f.value() ? FieldType.YES : FieldType.NO);
            } else if (operand instanceof Operand.Quoted q) {
                Optional<String> id = terms.id(type.kind(), q.text());
                if (id.isEmpty()) {
                    diagnostics.add(
                            Message.UNKNOWN_TERM,
                            compare.place(),
                            q.text(),
                            type.kind().replace('-', ' '),
                            Similar.advice(q.text(), terms.all(type.kind())));
                    return Optional.empty();
                }
                ids.add(id.get());
            } else {
                return mismatch(
                        compare,
                        field,
                        operand instanceof Operand.Flag ? "yes or no" : "a number",
                        "Write a term in quotes" + (type.isFlag() ? ", or true or false" : ""));
            }
        }
        return Optional.of(new Condition.Test(field, compare.op(), new Condition.Operand.Terms(ids)));
    }

    private Optional<Condition> variable(SyntaxConstraint.Compare compare, Field field, Operand.Variable variable) {
        Optional<Scope.Bound> bound = scope.get(variable.name());
        if (bound.isEmpty()) {
            diagnostics.add(Message.UNKNOWN_VARIABLE, compare.place(), variable.name());
            return Optional.empty();
        }
        if (field.type() instanceof FieldType.FactType) {
            if (compare.op() == Op.EQ
                    && variable.field().isEmpty()
                    && bound.get().field().isEmpty()) {
                return Optional.of(new Condition.Test(
                        field, Op.EQ, new Condition.Operand.FactOf(bound.get().pattern())));
            }
            return mismatch(compare, field, "that", "Write for instance subject == $m");
        }
        Optional<Scope.Bound> other = scope.field(variable.name(), variable.field());
        if (other.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_FIELD,
                    compare.place(),
                    variable.field().isEmpty() ? variable.name() : variable.field(),
                    "facts of type " + bound.get().type().name(),
                    Similar.advice(variable.field(), bound.get().type().fields().keySet()));
            return Optional.empty();
        }
        Field otherField = other.get().field().orElseThrow();
        boolean same = field.type().equals(otherField.type());
        boolean orderFits = field.type() instanceof FieldType.NumberType
                ? compare.op() != Op.IN && compare.op() != Op.NOT_IN
                : compare.op() == Op.EQ || compare.op() == Op.NE;
        if (!same || !orderFits) {
            return mismatch(
                    compare, field, otherField.label() + " by " + compare.op().sign(), "Compare like with like");
        }
        return Optional.of(new Condition.Test(
                field, compare.op(), new Condition.Operand.FieldOf(other.get().pattern(), otherField)));
    }

    private Optional<Condition> mismatch(SyntaxConstraint.Compare compare, Field field, String what, String advice) {
        diagnostics.add(
                Message.TYPE_MISMATCH,
                compare.place(),
                compare.field(),
                field.label() + " (" + field.type().describe() + ")",
                what,
                advice);
        return Optional.empty();
    }
}

package org.washwright.rule.check;

import java.util.Optional;
import java.util.TreeSet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Similar;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Condition;
import org.washwright.rule.Field;
import org.washwright.rule.Op;
import org.washwright.rule.syntax.SyntaxConstraint;
import org.washwright.rule.syntax.SyntaxConstraint.Operand;
import org.washwright.task.FieldType;

/** Checks that a field is compared with something of its own dimension or kind. */
final class ComparisonChecker {

    private final Terms terms;
    private final Diagnostics diagnostics;
    private final Scope scope;

    ComparisonChecker(Terms terms, Diagnostics diagnostics, Scope scope) {
        this.terms = terms;
        this.diagnostics = diagnostics;
        this.scope = scope;
    }

    /** Checks one comparison of a field; empty after an error. */
    Optional<Condition> compare(SyntaxConstraint.Compare compare, Field field) {
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

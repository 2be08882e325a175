package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Op;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.SyntaxConstraint;
import org.washwright.rule.syntax.SyntaxConstraint.Operand;
import org.washwright.task.FieldType;

/** Makes conditions out of the cells of a table's condition columns. */
final class TableTests {

    private static final int MAX_WORDS = 200;

    private final Terms terms;
    private final Diagnostics diagnostics;

    TableTests(Terms terms, Diagnostics diagnostics) {
        this.terms = terms;
        this.diagnostics = diagnostics;
    }

    /** The condition that a cell under a condition column asks for; empty after an error. */
    Optional<SyntaxConstraint> constraint(String type, String field, String cell, Place place) {
        FieldType fieldType = field(type + "." + field).orElseThrow();
        if (fieldType instanceof FieldType.NumberType) {
            return Optional.of(number(field, cell, place));
        }
        boolean not = cell.startsWith("!");
        List<Operand> operands = new ArrayList<>();
        List<String> words = List.of((not ? cell.substring(1) : cell).split("\\|", -1));
        if (words.size() > MAX_WORDS || words.stream().anyMatch(String::isBlank)) {
            diagnostics.add(
                    Message.TABLE_SHAPE,
                    place,
                    cell,
                    words.size() > MAX_WORDS ? "a cell of more than " + MAX_WORDS + " words" : "an empty word");
            return Optional.empty();
        }
        for (String word : words) {
            String w = word.strip();
            boolean flag = fieldType instanceof FieldType.TermType t && t.isFlag();
            operands.add(
                    flag && (w.equals("yes") || w.equals("no"))
                            ? new Operand.Flag(w.equals("yes"))
                            : new Operand.Quoted(w));
        }
        Op op = operands.size() == 1 ? (not ? Op.NE : Op.EQ) : (not ? Op.NOT_IN : Op.IN);
        return Optional.of(new SyntaxConstraint.Compare(field, op, operands, place));
    }

    private static SyntaxConstraint number(String field, String cell, Place place) {
        for (Op op : List.of(Op.GE, Op.LE, Op.NE, Op.GT, Op.LT, Op.EQ)) {
            if (cell.startsWith(op.sign())) {
                String rest = cell.substring(op.sign().length()).strip();
                return new SyntaxConstraint.Compare(field, op, List.of(new Operand.Quoted(rest)), place);
            }
        }
        return new SyntaxConstraint.Compare(field, Op.EQ, List.of(new Operand.Quoted(cell)), place);
    }

    /** Says that a condition column is none. */
    void unknownField(String column, Place place) {
        int dot = column.indexOf('.');
        Set<String> known = terms.types()
                .type(column.substring(0, dot))
                .map(t -> t.fields().keySet())
                .orElse(terms.types().byName().keySet());
        diagnostics.add(
                Message.UNKNOWN_FIELD,
                place,
                column,
                "the fact types",
                Similar.advice(column.substring(dot + 1), known));
    }

    /** What the field of a condition column holds. */
    Optional<FieldType> field(String column) {
        int dot = column.indexOf('.');
        return terms.types()
                .type(column.substring(0, dot))
                .flatMap(t -> t.field(column.substring(dot + 1)))
                .map(f -> f.type());
    }
}

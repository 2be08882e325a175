package org.washwright.fuzz;

import java.util.ArrayDeque;
import java.util.Deque;
import org.washwright.generate.SiUnits;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Condition;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;
import org.washwright.task.FieldType;

/** The canonical text of a rule with the SI unit behind every number, so that it can be read again without any rounding. */
final class ExactText {

    private record Number(double si, Dimension dimension) {}

    private ExactText() {}

    static String of(Rule rule) {
        Deque<Number> numbers = new ArrayDeque<>();
        rule.patterns().forEach(p -> numbers(p.condition(), numbers));
        rule.effects().forEach(e -> {
            if (e instanceof Effect.Limit l && l.bound() instanceof Effect.Bound.Literal x) {
                numbers.add(new Number(x.si(), l.dimension()));
            }
        });
        String text = RuleText.canonical(rule);
        StringBuilder out = new StringBuilder();
        int from = text.indexOf("\nwhen\n");
        out.append(text, 0, from);
        for (Number n : numbers) {
            String bare = (n.dimension() == Dimension.DATE ? RuleText.date(n.si()) : n.si()) + "\"";
            int at = text.indexOf("\"" + bare, from);
            Promise.holds(at >= 0, bare + " is not in " + text);
            String unit = SiUnits.of(n.dimension());
            Promise.holds(unit.isEmpty() || Quantities.toSi("1", unit, n.dimension()) == 1, unit + " is not coherent");
            out.append(text, from, at + bare.length())
                    .append(unit.isEmpty() ? "" : " " + unit)
                    .append('"');
            from = at + 1 + bare.length();
        }
        return out.append(text.substring(from)).toString();
    }

    private static void numbers(Condition condition, Deque<Number> numbers) {
        if (condition instanceof Condition.All all) {
            all.parts().forEach(c -> numbers(c, numbers));
        } else if (condition instanceof Condition.Any any) {
            any.parts().forEach(c -> numbers(c, numbers));
        } else if (((Condition.Test) condition).operand() instanceof Condition.Operand.Number n) {
            FieldType type = ((Condition.Test) condition).field().type();
            numbers.add(new Number(n.si(), ((FieldType.NumberType) type).dimension()));
        }
    }
}

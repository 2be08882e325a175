package org.washwright.explain.whynot;

import java.util.ArrayList;
import java.util.List;
import org.washwright.engine.Fact;
import org.washwright.engine.Logic;
import org.washwright.engine.Truth;
import org.washwright.rule.Condition;
import org.washwright.rule.Pattern;

/** How far one fact is from a pattern, and by which comparisons. */
final class Distance {

    private Distance() {}

    /** A comparison on a fact and how it comes out. */
    record Compared(Condition.Test test, Truth truth) {}

    /**
     * The cost of taking a fact for a pattern.
     *
     * @param earlier facts of earlier patterns; null where there is none
     */
    static Cost of(Pattern pattern, Fact fact, List<Fact> earlier) {
        Cost cost = of(pattern.condition(), fact, earlier);
        return fact.sure() ? cost : cost.plus(Cost.ONE_OPEN);
    }

    private static Cost of(Condition condition, Fact fact, List<Fact> earlier) {
        if (condition instanceof Condition.Test test) {
            return switch (truth(test, fact, earlier)) {
                case TRUE -> Cost.NONE;
                case UNDECIDED -> Cost.ONE_OPEN;
                case FALSE -> test.operand() instanceof Condition.Operand.FactOf ? Cost.APART : Cost.ONE_FAILED;
            };
        }
        if (condition instanceof Condition.All all) {
            Cost sum = Cost.NONE;
            for (Condition part : all.parts()) {
                sum = sum.plus(of(part, fact, earlier));
            }
            return sum;
        }
        return nearest((Condition.Any) condition, fact, earlier);
    }

    private static Cost nearest(Condition.Any any, Fact fact, List<Fact> earlier) {
        Cost least = null;
        for (Condition part : any.parts()) {
            Cost cost = of(part, fact, earlier);
            least = least == null || cost.compareTo(least) < 0 ? cost : least;
        }
        // Nothing to choose from holds of nothing.
        return least == null ? Cost.ONE_FAILED : least;
    }

    /** The comparisons that matter: all that are asked for at once, and of alternatives the nearest one. */
    static List<Compared> compared(Pattern pattern, Fact fact, List<Fact> earlier) {
        List<Compared> out = new ArrayList<>();
        compared(pattern.condition(), fact, earlier, out);
        return out;
    }

    private static void compared(Condition condition, Fact fact, List<Fact> earlier, List<Compared> out) {
        if (condition instanceof Condition.Test test) {
            out.add(new Compared(test, truth(test, fact, earlier)));
        } else if (condition instanceof Condition.All all) {
            all.parts().forEach(part -> compared(part, fact, earlier, out));
        } else {
            Condition.Any any = (Condition.Any) condition;
            Cost least = nearest(any, fact, earlier);
            any.parts().stream()
                    .filter(part -> of(part, fact, earlier).equals(least))
                    .findFirst()
                    .ifPresent(part -> compared(part, fact, earlier, out));
        }
    }

    /** Truth of a comparison; one with a fact that is not there waits for that fact. */
    private static Truth truth(Condition.Test test, Fact fact, List<Fact> earlier) {
        boolean missing = test.operand() instanceof Condition.Operand.FieldOf f && earlier.get(f.pattern()) == null
                || test.operand() instanceof Condition.Operand.FactOf g && earlier.get(g.pattern()) == null;
        return missing ? Truth.UNDECIDED : Logic.truth(test, fact, earlier);
    }
}

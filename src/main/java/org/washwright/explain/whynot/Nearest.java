package org.washwright.explain.whynot;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.engine.Fact;
import org.washwright.engine.Truth;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * Finds the facts that come nearest to a rule: those for which the fewest conditions fail, and of these the ones for which the
 * fewest are undecided. A plain search over all choices, which leaves out only what can't be nearer than what was found; so
 * a rule fires exactly when nothing fails and nothing is open for the nearest facts.
 */
final class Nearest {

    private static final int MOST_KEPT = 3;

    private final Rule rule;
    private final Map<String, List<Fact>> byType = new HashMap<>();
    private final List<Tuple> kept = new ArrayList<>();
    private Cost best;

    /**
     * Facts for the patterns of a rule.
     *
     * @param facts one for each pattern in order; null for {@code not}, {@code exists} and where there is no fact of the type
     */
    record Tuple(List<Fact> facts, Cost cost) {
        Tuple {
            facts = Collections.unmodifiableList(new ArrayList<>(facts));
        }
    }

    private Nearest(Rule rule, List<Fact> facts) {
        this.rule = rule;
        facts.forEach(f ->
                byType.computeIfAbsent(f.type().name(), k -> new ArrayList<>()).add(f));
    }

    /** The nearest facts, at most three sets of them that are equally near; never none. */
    static List<Tuple> of(Rule rule, List<Fact> facts) {
        Nearest nearest = new Nearest(rule, facts);
        nearest.search(new ArrayList<>(), Cost.NONE);
        return List.copyOf(nearest.kept);
    }

    private List<Fact> facts(Pattern pattern) {
        return byType.getOrDefault(pattern.type().name(), List.of());
    }

    private void search(List<Fact> tuple, Cost soFar) {
        if (best != null && (soFar.compareTo(best) > 0 || soFar.equals(best) && kept.size() == MOST_KEPT)) {
            return;
        }
        int index = tuple.size();
        if (index == rule.patterns().size()) {
            keep(tuple, soFar);
            return;
        }
        Pattern pattern = rule.patterns().get(index);
        if (pattern.sign() != Sign.POSITIVE) {
            step(tuple, null, soFar.plus(signed(pattern, tuple)));
            return;
        }
        record Choice(Fact fact, Cost cost) {}
        List<Choice> choices = new ArrayList<>();
        facts(pattern).forEach(f -> choices.add(new Choice(f, Distance.of(pattern, f, tuple))));
        if (choices.isEmpty()) {
            step(tuple, null, soFar.plus(Cost.APART));
            return;
        }
        // The nearest first, so that most others need not be followed.
        choices.sort(Comparator.comparing(Choice::cost));
        choices.forEach(c -> step(tuple, c.fact(), soFar.plus(c.cost())));
    }

    private void step(List<Fact> tuple, Fact fact, Cost cost) {
        tuple.add(fact);
        search(tuple, cost);
        tuple.remove(tuple.size() - 1);
    }

    private void keep(List<Fact> tuple, Cost cost) {
        if (best == null || cost.compareTo(best) < 0) {
            kept.clear();
            best = cost;
        }
        kept.add(new Tuple(tuple, cost));
    }

    private Cost signed(Pattern pattern, List<Fact> tuple) {
        Truth exists = exists(pattern, facts(pattern), tuple);
        Truth truth = pattern.sign() == Sign.NOT ? exists.not() : exists;
        return switch (truth) {
            case TRUE -> Cost.NONE;
            case UNDECIDED -> Cost.ONE_OPEN;
            case FALSE -> Cost.ONE_FAILED;
        };
    }

    /** Truth of "a fact meets the pattern"; facts of earlier patterns that are not there leave it open. */
    private static Truth exists(Pattern pattern, List<Fact> facts, List<Fact> tuple) {
        Truth exists = Truth.FALSE;
        for (Fact fact : facts) {
            exists = exists.or(meets(pattern, fact, tuple));
        }
        return exists;
    }

    /** Truth of "this fact is there and meets the pattern". */
    static Truth meets(Pattern pattern, Fact fact, List<Fact> tuple) {
        return switch (Distance.of(pattern, fact, tuple).state()) {
            case FIRED -> Truth.TRUE;
            case UNDECIDED -> Truth.UNDECIDED;
            case FAILED -> Truth.FALSE;
        };
    }
}

package org.washwright.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * Runs rules by plain nested loops over the rule tree: slow, short and easy to believe. It is what the compiled rules are
 * checked against, and what tries a draft with nothing compiled.
 */
public final class ReferenceInterpreter implements Inference {

    private final Map<Integer, List<Rule>> byLevel = new TreeMap<>();
    private final FactTypes types;

    private ReferenceInterpreter(List<Rule> rules, Map<String, Integer> levels, FactTypes types) {
        rules.forEach(r -> byLevel.computeIfAbsent(levels.getOrDefault(r.id(), 0), k -> new ArrayList<>())
                .add(r));
        this.types = types;
    }

    /** Makes interpreters. */
    public static InferenceFactory factory() {
        return ReferenceInterpreter::new;
    }

    @Override
    public Inferred run(List<Fact> facts) {
        List<Fact> known = new ArrayList<>(facts);
        Map<String, Fact> conclusions = new TreeMap<>();
        List<Match> matches = new ArrayList<>();
        for (List<Rule> level : byLevel.values()) {
            List<Match> found = new ArrayList<>();
            level.forEach(rule -> match(rule, known, new ArrayList<>(), Truth.TRUE, found));
            found.sort(Match.ORDER);
            matches.addAll(found);
            for (Match m : found) {
                for (Fact f : Conclusions.of(m, types)) {
                    conclusions.merge(f.id(), f, (a, b) -> a.sure() ? a : b);
                }
            }
            known.removeIf(f -> conclusions.containsKey(f.id()));
            known.addAll(conclusions.values());
        }
        return new Inferred(matches, List.copyOf(conclusions.values()));
    }

    private static void match(Rule rule, List<Fact> facts, List<Fact> tuple, Truth soFar, List<Match> found) {
        int index = tuple.size();
        if (index == rule.patterns().size()) {
            List<Optional<Fact>> matched =
                    tuple.stream().map(Optional::ofNullable).toList();
            found.add(new Match(rule, matched, soFar == Truth.TRUE));
            return;
        }
        Pattern pattern = rule.patterns().get(index);
        if (pattern.sign() != Sign.POSITIVE) {
            Truth exists = exists(pattern, facts, tuple);
            Truth truth = soFar.and(pattern.sign() == Sign.NOT ? exists.not() : exists);
            if (truth != Truth.FALSE) {
                tuple.add(null);
                match(rule, facts, tuple, truth, found);
                tuple.remove(index);
            }
            return;
        }
        for (Fact fact : facts) {
            Truth truth = soFar.and(truth(pattern, fact, tuple));
            if (truth != Truth.FALSE) {
                tuple.add(fact);
                match(rule, facts, tuple, truth, found);
                tuple.remove(index);
            }
        }
    }

    private static Truth exists(Pattern pattern, List<Fact> facts, List<Fact> tuple) {
        Truth exists = Truth.FALSE;
        for (Fact fact : facts) {
            exists = exists.or(truth(pattern, fact, tuple));
        }
        return exists;
    }

    /** Truth of "this fact exists and meets the pattern". */
    static Truth truth(Pattern pattern, Fact fact, List<Fact> earlier) {
        if (!fact.type().name().equals(pattern.type().name())) {
            return Truth.FALSE;
        }
        Truth truth = Logic.truth(pattern.condition(), fact, earlier);
        return fact.sure() ? truth : truth.and(Truth.UNDECIDED);
    }
}

package org.washwright.coverage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Outcome;
import org.washwright.engine.Fact;
import org.washwright.engine.Logic;
import org.washwright.engine.Truth;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Condition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/** Counts the outcomes of a rule's comparisons: each is asked of every fact that the patterns before it let come so far. */
final class TestCounter {

    private final Rule rule;
    private final List<List<Condition.Test>> tests = new ArrayList<>();
    private final List<List<long[]>> counts = new ArrayList<>();

    TestCounter(Rule rule) {
        this.rule = rule;
        for (Pattern p : rule.patterns()) {
            List<Condition.Test> own = p.condition().tests().toList();
            tests.add(own);
            counts.add(own.stream().map(t -> new long[Truth.values().length]).toList());
        }
    }

    /**
     * Counts one more task.
     *
     * @param facts facts of the task by the name of their type
     */
    void count(Outcome outcome, Map<String, List<Fact>> facts) {
        if (!rule.isLineRule()) {
            match(facts, new ArrayList<>());
            return;
        }
        for (ProcessLine line : outcome.lines()) {
            Map<String, List<Fact>> shown = new HashMap<>(facts);
            shown.put(
                    FactTypes.PROCESS,
                    facts.getOrDefault(FactTypes.PROCESS, List.of()).stream()
                            .filter(f ->
                                    f.id().equals("process/" + line.process().id()))
                            .toList());
            shown.putAll(byType(line.facts()));
            match(shown, new ArrayList<>());
        }
    }

    /** Facts by the name of their type. */
    static Map<String, List<Fact>> byType(List<Fact> facts) {
        Map<String, List<Fact>> out = new HashMap<>();
        facts.forEach(f ->
                out.computeIfAbsent(f.type().name(), k -> new ArrayList<>()).add(f));
        return out;
    }

    private void match(Map<String, List<Fact>> facts, List<Fact> tuple) {
        int index = tuple.size();
        if (index == rule.patterns().size()) {
            return;
        }
        Pattern p = rule.patterns().get(index);
        for (Fact fact : facts.getOrDefault(p.type().name(), List.of())) {
            for (int i = 0; i < tests.get(index).size(); i++) {
                Truth truth = Logic.truth(tests.get(index).get(i), fact, tuple);
                counts.get(index).get(i)[(fact.sure() ? truth : truth.and(Truth.UNDECIDED)).ordinal()]++;
            }
            if (p.sign() == Sign.POSITIVE && Logic.truth(p.condition(), fact, tuple) != Truth.FALSE) {
                tuple.add(fact);
                match(facts, tuple);
                tuple.remove(index);
            }
        }
        if (p.sign() != Sign.POSITIVE) {
            tuple.add(null);
            match(facts, tuple);
            tuple.remove(index);
        }
    }

    List<TestCoverage> counts() {
        List<TestCoverage> out = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            for (int j = 0; j < tests.get(i).size(); j++) {
                long[] n = counts.get(i).get(j);
                out.add(new TestCoverage(
                        i,
                        tests.get(i).get(j),
                        n[Truth.TRUE.ordinal()],
                        n[Truth.FALSE.ordinal()],
                        n[Truth.UNDECIDED.ordinal()]));
            }
        }
        return out;
    }
}

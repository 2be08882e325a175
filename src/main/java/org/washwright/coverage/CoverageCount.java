package org.washwright.coverage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Outcome;
import org.washwright.cases.Flips;
import org.washwright.engine.Fact;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;

/** Counts how tasks exercise the rules of an edition, one task after the other, and keeps little of each. */
public final class CoverageCount {

    private final Edition edition;
    private final Map<String, TestCounter> counters = new LinkedHashMap<>();
    private final List<Flips.Ran> ran = new ArrayList<>();

    /** A count of nothing yet. */
    public CoverageCount(Edition edition) {
        this.edition = edition;
        edition.rules().forEach(r -> counters.put(r.id(), new TestCounter(r)));
    }

    /**
     * Counts one more task.
     *
     * @param id what the task is called
     * @param asOf date for which law was read, ISO 8601
     * @param outcome what the edition made of it
     */
    public void add(String id, CleaningTask task, String asOf, Outcome outcome) {
        Map<String, List<Fact>> facts = TestCounter.byType(outcome.facts().all());
        counters.values().forEach(c -> c.count(outcome, facts));
        ran.add(Flips.Ran.of(id, task, asOf, outcome));
    }

    /** All that was counted so far. */
    public Coverage coverage() {
        Map<String, Flips.Pair> heldBack = Flips.of(ran).heldBack();
        return new Coverage(
                ran.size(), edition.rules().stream().map(r -> of(r, heldBack)).toList());
    }

    private RuleCoverage of(Rule rule, Map<String, Flips.Pair> heldBack) {
        int fired =
                (int) ran.stream().filter(r -> r.fired().contains(rule.id())).count();
        int silent = (int) ran.stream().filter(r -> r.silent(rule.id())).count();
        return new RuleCoverage(
                rule,
                fired,
                ran.size() - fired - silent,
                silent,
                Optional.ofNullable(heldBack.get(rule.id())),
                counters.get(rule.id()).counts());
    }
}

package org.washwright.rulebook;

import java.util.List;
import java.util.Optional;
import org.washwright.analysis.TestWords;
import org.washwright.cases.Flips;
import org.washwright.coverage.Coverage;
import org.washwright.coverage.RuleCoverage;
import org.washwright.rule.Edition;

/** Coverage as shown: rules that lack something first. */
record CoverageCard(
        int tasks,
        long fired,
        long heldBack,
        long processesAlone,
        int rules,
        long bothWays,
        long conditions,
        List<Row> rows) {

    /** A rule. */
    record Row(
            String id,
            String title,
            int fired,
            int undecided,
            int failed,
            boolean complete,
            boolean processesAlone,
            Optional<Flips.Pair> heldBack,
            List<Seen> tests) {}

    /** A condition; {@code missing} says what was never seen. */
    record Seen(String words, long yes, long no, long open, String missing) {}

    static CoverageCard of(Coverage coverage, Edition edition) {
        return new CoverageCard(
                coverage.tasks(),
                coverage.fired(),
                coverage.heldBack(),
                coverage.readingProcessesAlone(),
                coverage.rules().size(),
                coverage.bothWays(),
                coverage.tests(),
                coverage.rules().stream()
                        .sorted(java.util.Comparator.comparing(RuleCoverage::isComplete))
                        .map(r -> row(r, edition))
                        .toList());
    }

    private static Row row(RuleCoverage r, Edition edition) {
        return new Row(
                r.rule().id(),
                r.rule().title(),
                r.fired(),
                r.undecided(),
                r.failed(),
                r.isComplete(),
                r.readsProcessesAlone(),
                r.heldBack(),
                r.tests().stream()
                        .map(t -> new Seen(TestWords.of(t.test(), edition), t.yes(), t.no(), t.open(), t.missing()))
                        .toList());
    }
}

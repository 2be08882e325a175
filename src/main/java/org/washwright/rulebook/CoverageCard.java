package org.washwright.rulebook;

import java.util.List;
import org.washwright.analysis.TestWords;
import org.washwright.coverage.Coverage;
import org.washwright.coverage.RuleCoverage;
import org.washwright.rule.Edition;

/** Coverage as shown: rules that lack something first. */
record CoverageCard(int tasks, long fired, int rules, long bothWays, long conditions, List<Row> rows) {

    /** A rule. */
    record Row(String id, String title, int fired, int undecided, int failed, boolean complete, List<Seen> tests) {}

    /** A condition; {@code missing} says what was never seen. */
    record Seen(String words, long yes, long no, long open, String missing) {}

    static CoverageCard of(Coverage coverage, Edition edition) {
        return new CoverageCard(
                coverage.tasks(),
                coverage.fired(),
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
                r.tests().stream()
                        .map(t -> new Seen(TestWords.of(t.test(), edition), t.yes(), t.no(), t.open(), t.missing()))
                        .toList());
    }
}

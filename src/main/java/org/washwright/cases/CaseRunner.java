package org.washwright.cases;

import java.util.ArrayList;
import java.util.List;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;

/** Runs reference cases by an edition. Safe for use by several threads at once. */
public final class CaseRunner {

    private final Assessor assessor;
    private final String asOf;

    /**
     * A runner.
     *
     * @param assessor the edition, ready to answer
     * @param asOf date for which law is read by cases that name none, ISO 8601
     */
    public CaseRunner(Assessor assessor, String asOf) {
        this.assessor = assessor;
        this.asOf = asOf;
    }

    /** Runs cases on all cores; the results stand in the order of the cases. */
    public List<CaseResult> run(List<Case> cases) {
        return cases.parallelStream().map(this::run).toList();
    }

    /** Runs one case. */
    public CaseResult run(Case reference) {
        Outcome outcome;
        try {
            outcome = assessor.outcome(
                    reference.task(), Wishes.on(reference.asOf().orElse(asOf)));
        } catch (RefusedTask e) {
            return new CaseResult(reference, List.of(), e.diagnostics());
        }
        ExpectationWords words = new ExpectationWords(assessor.edition());
        ExpectationCheck check = new ExpectationCheck(outcome);
        List<CaseResult.Check> checks = new ArrayList<>();
        for (Expectation e : reference.expectations()) {
            String found = check.against(e);
            checks.add(new CaseResult.Check(e, words.of(e), found.isEmpty(), found));
        }
        return new CaseResult(reference, checks, List.of());
    }
}

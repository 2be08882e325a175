package org.washwright.rulebook;

import java.util.List;
import org.washwright.cases.Case;
import org.washwright.cases.CaseResult;
import org.washwright.document.Diagnostic;
import org.washwright.rule.Edition;
import org.washwright.task.TaskWriter;

/**
 * A reference case as shown.
 *
 * @param state {@code holds}, {@code fails} or {@code not run}
 * @param source what it cites, in words
 * @param task its task as YAML
 */
record CaseCard(
        String id,
        String title,
        String state,
        String basis,
        String source,
        String place,
        String task,
        List<CaseResult.Check> checks,
        List<String> refused) {

    static final String HOLDS = "holds";
    static final String FAILS = "fails";
    static final String NOT_RUN = "not run";

    /** All cases of an edition, those that fail first, and how many hold. */
    record All(boolean ran, long hold, long fail, long expectations, List<CaseCard> cards) {}

    /** True when it was run and does not hold. */
    public boolean fails() {
        return state.equals(FAILS);
    }

    /** The state as a class name. */
    public String mark() {
        return state.replace(' ', '-');
    }

    static All ran(List<CaseResult> results, Edition edition) {
        long hold = results.stream().filter(CaseResult::holds).count();
        List<CaseCard> cards = results.stream()
                .sorted(java.util.Comparator.comparing(CaseResult::holds))
                .map(r -> of(
                        r.reference(),
                        edition,
                        r.holds() ? HOLDS : FAILS,
                        r.checks(),
                        r.refused().stream().map(Diagnostic::toString).toList()))
                .toList();
        return new All(
                true,
                hold,
                results.size() - hold,
                results.stream().mapToLong(r -> r.checks().size()).sum(),
                cards);
    }

    static All notRun(List<Case> cases, Edition edition) {
        return new All(
                false,
                0,
                0,
                cases.stream().mapToLong(c -> c.expectations().size()).sum(),
                cases.stream()
                        .map(c -> of(c, edition, NOT_RUN, List.of(), List.of()))
                        .toList());
    }

    private static CaseCard of(
            Case c, Edition edition, String state, List<CaseResult.Check> checks, List<String> refused) {
        List<String> sources = c.sources().stream()
                .map(s -> Glossary.cited(edition, s.locator().isEmpty() ? s.source() : s.source() + ", " + s.locator())
                        .words())
                .toList();
        return new CaseCard(
                c.id(),
                c.title(),
                state,
                c.basis().word(),
                String.join("; ", sources),
                c.place().file() + ", line " + c.place().line(),
                TaskWriter.yaml(c.task(), edition, ""),
                checks,
                refused);
    }
}

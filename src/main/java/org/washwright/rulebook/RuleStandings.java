package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.analysis.Examination;
import org.washwright.analysis.Finding;
import org.washwright.coverage.Coverage;
import org.washwright.coverage.RuleCoverage;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/** How each rule of an edition stands: what cases make of it, what readers object, what the examination found. */
@ApplicationScoped
public class RuleStandings {
    private static final long PATIENCE_MILLIS = 300;

    private final Editions editions;
    private final Checkings checkings;
    private final RuleMarks marks;

    RuleStandings(Editions editions, Checkings checkings, RuleMarks marks) {
        this.editions = editions;
        this.checkings = checkings;
        this.marks = marks;
    }

    /**
     * How the rules stand.
     *
     * @param readable false while the files have errors; then only marks are told
     * @param counting true while the cases are still being run
     * @param cases how many cases there are
     * @param examined true when the examination ran on these files
     * @param rules standing by rule id
     */
    public record Standings(
            boolean readable, boolean counting, int cases, boolean examined, Map<String, RuleStanding> rules) {}

    /**
     * How one rule stands.
     *
     * @param fired on how many cases it fires
     * @param undecided on how many it is undecided
     * @param heldBack true when one change of a case holds it back; the same where no task can
     * @param marks how many open marks stand against it
     * @param findings what the examination says of it
     */
    public record RuleStanding(int fired, int undecided, boolean heldBack, int marks, List<String> findings) {
        private static final RuleStanding NOTHING = new RuleStanding(0, 0, false, 0, List.of());

        RuleStanding covered(RuleCoverage c) {
            return new RuleStanding(
                    c.fired(), c.undecided(), c.heldBack().isPresent() || c.readsProcessesAlone(), marks, findings);
        }

        RuleStanding marked(int count) {
            return new RuleStanding(fired, undecided, heldBack, count, findings);
        }

        RuleStanding with(String finding) {
            List<String> more = new ArrayList<>(findings);
            more.add(finding);
            return new RuleStanding(fired, undecided, heldBack, marks, List.copyOf(more));
        }
    }

    /** How the rules of an edition stand by its present files; running its cases is begun unless it was before. */
    public Standings of(UUID workspace, UUID id) {
        Map<String, RuleStanding> rules = new TreeMap<>();
        Map<String, Integer> open = new HashMap<>(marks.openByRule(workspace));
        Optional<Edition> edition = editions.reading(workspace, id).edition();
        if (edition.isEmpty()) {
            open.forEach((rule, count) -> rules.put(rule, RuleStanding.NOTHING.marked(count)));
            return new Standings(false, false, 0, false, rules);
        }
        for (Rule rule : edition.get().rules()) {
            rules.put(rule.id(), RuleStanding.NOTHING.marked(open.getOrDefault(rule.id(), 0)));
        }
        Work<Coverage> work = checkings.coverage(workspace, id);
        work.await(PATIENCE_MILLIS);
        Optional<Coverage> coverage = work.result();
        coverage.ifPresent(c ->
                c.rules().forEach(r -> rules.computeIfPresent(r.rule().id(), (k, standing) -> standing.covered(r))));
        Optional<Examination> examined = checkings.examination(workspace, id).flatMap(Work::result);
        examined.ifPresent(e -> e.open().forEach(f -> tell(f, rules)));
        return new Standings(true, coverage.isEmpty(), work.all(), examined.isPresent(), rules);
    }

    private static void tell(Finding finding, Map<String, RuleStanding> rules) {
        String words = finding.kind().word() + ": " + finding.words();
        finding.rules().forEach(id -> rules.computeIfPresent(id, (k, standing) -> standing.with(words)));
    }
}

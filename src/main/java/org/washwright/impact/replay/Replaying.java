package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.cases.CaseRunner;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.engine.InferenceFactory;
import org.washwright.explain.compare.Comparing;
import org.washwright.explain.compare.Comparison;
import org.washwright.impact.meaning.Difference;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.meaning.State;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;

/**
 * Answers tasks by two editions and says which answers differ, how, and by which part of the change. A rule that was only
 * renamed is asked under its new id by both, so that a name makes no difference.
 */
public final class Replaying {

    /** Most processes told of one answer. */
    static final int MOST_PROCESSES = 8;

    /** Most findings told of one answer. */
    static final int MOST_SAID = 6;

    private static final int FORMAT = 1;

    private final State old;
    private final State now;
    private final MeaningComparison change;
    private final Attribution attribution;
    private final Assessor before;
    private final Assessor after;
    private final String asOf;

    /**
     * Makes both editions ready.
     *
     * @param factory how rules are run
     * @param asOf date for which law is read where a task names none, ISO 8601
     */
    public Replaying(State old, State now, InferenceFactory factory, String asOf) {
        this.old = old;
        this.now = now;
        this.change = MeaningComparison.of(old, now);
        this.attribution = new Attribution(change);
        this.before = Assessor.of(renamed(old.edition(), change.renamed()), factory);
        this.after = Assessor.of(now.edition(), factory);
        this.asOf = asOf;
    }

    /** The two editions compared by meaning. */
    public MeaningComparison change() {
        return change;
    }

    private static Edition renamed(Edition edition, Map<String, String> ids) {
        return ids.isEmpty()
                ? edition
                : edition.with(edition.rules().stream()
                        .map(r -> new Rule(
                                ids.getOrDefault(r.id(), r.id()),
                                r.title(),
                                r.basis(),
                                r.sources(),
                                r.since(),
                                r.note(),
                                r.place(),
                                r.patterns(),
                                r.effects()))
                        .toList());
    }

    /** What came of one task. */
    private record Tried(Optional<Impact.AnswerChange> changed, Optional<Impact.Refused> refused, Set<String> fired) {}

    /**
     * Tries tasks on all cores, and runs the cases of both.
     *
     * @param progress told how many tasks are done
     */
    public Impact of(List<Trial> trials, IntConsumer progress) {
        AtomicInteger done = new AtomicInteger();
        List<Tried> tried = trials.parallelStream()
                .map(t -> {
                    Tried one = tried(t);
                    progress.accept(done.incrementAndGet());
                    return one;
                })
                .toList();
        List<Impact.AnswerChange> changed = tried.stream()
                .flatMap(t -> t.changed().stream())
                .sorted(Comparator.comparing(Impact.AnswerChange::weight)
                        .thenComparing(Impact.AnswerChange::title)
                        .thenComparing(Impact.AnswerChange::key))
                .toList();
        List<Impact.Refused> refused =
                tried.stream().flatMap(t -> t.refused().stream()).toList();
        List<Impact.CaseTurn> cases = Cases.turned(
                new CaseRunner(before, asOf).run(old.cases()), new CaseRunner(after, asOf).run(now.cases()), change);
        List<Impact.Part> parts = parts(tried, changed);
        int same = trials.size() - changed.size() - refused.size();
        return new Impact(
                FORMAT,
                ImpactSentence.of(trials.size(), changed, refused, cases, parts),
                change.before(),
                change.after(),
                asOf,
                trials.size(),
                same,
                changed,
                refused,
                cases,
                parts,
                Sample.of(changed));
    }

    private List<Impact.Part> parts(List<Tried> tried, List<Impact.AnswerChange> changed) {
        Map<String, Integer> reached = new TreeMap<>();
        tried.forEach(t -> t.fired().forEach(rule -> reached.merge(rule, 1, Integer::sum)));
        Map<String, Integer> changes = new TreeMap<>();
        changed.forEach(c -> c.by().forEach(by -> changes.merge(by.key(), 1, Integer::sum)));
        List<Impact.Part> out = new ArrayList<>();
        for (Difference d : attribution.all()) {
            By by = Attribution.by(d);
            out.add(new Impact.Part(
                    by,
                    d.what(),
                    d.place().file().isEmpty() ? "" : d.place().toString(),
                    reached.getOrDefault(d.id(), 0),
                    changes.getOrDefault(by.key(), 0)));
        }
        out.sort(Comparator.comparing((Impact.Part p) -> -p.changes()).thenComparing(p -> p.by().key()));
        return out;
    }

    private Tried tried(Trial trial) {
        Diagnostics oldWrong = new Diagnostics();
        Diagnostics newWrong = new Diagnostics();
        Optional<FrozenAnswer> a = answered(before, trial, oldWrong);
        Optional<FrozenAnswer> b = answered(after, trial, newWrong);
        if (a.isEmpty() || b.isEmpty()) {
            return new Tried(
                    Optional.empty(),
                    Optional.of(new Impact.Refused(
                            trial.key(),
                            trial.title(),
                            trial.origin(),
                            a.isEmpty() ? said(oldWrong) : List.of(),
                            b.isEmpty() ? said(newWrong) : List.of())),
                    Set.of());
        }
        Set<String> fired = new HashSet<>(rules(a.get()));
        fired.addAll(rules(b.get()));
        return new Tried(changed(trial, a.get(), b.get()), Optional.empty(), fired);
    }

    private static Set<String> rules(FrozenAnswer frozen) {
        return frozen.answer().firings().stream().map(Answer.Firing::rule).collect(Collectors.toSet());
    }

    private static List<String> said(Diagnostics wrong) {
        return wrong.all().stream().map(Diagnostic::toString).toList();
    }

    private Optional<FrozenAnswer> answered(Assessor assessor, Trial trial, Diagnostics wrong) {
        Optional<CleaningTask> task = trial.reader().read(assessor.edition(), wrong);
        try {
            return task.map(t -> assessor.assess(t, Wishes.on(trial.asOf().orElse(asOf))));
        } catch (RefusedTask refusal) {
            refusal.diagnostics().forEach(wrong::add);
            return Optional.empty();
        }
    }

    private Optional<Impact.AnswerChange> changed(Trial trial, FrozenAnswer a, FrozenAnswer b) {
        Comparison c = Comparing.of(a, b);
        if (!differs(c)) {
            return Optional.empty();
        }
        List<Difference> by = attribution.of(c);
        boolean onlyWords = !by.isEmpty() && by.stream().noneMatch(Difference::answers);
        Weight weight = ChangeWords.weight(c, onlyWords);
        List<Comparison.ProcessChange> moved = c.processes().stream()
                .filter(p -> !p.before().equals(p.after()))
                // One that falls out moves all behind it: it is told first.
                .sorted(Comparator.comparing(
                        p -> p.before().status().equals(p.after().status())))
                .toList();
        return Optional.of(new Impact.AnswerChange(
                trial.key(),
                trial.title(),
                trial.origin(),
                weight,
                ChangeWords.sentence(c, weight),
                c.before().leader(),
                c.after().leader(),
                moved.stream().limit(MOST_PROCESSES).map(ChangeWords::process).toList(),
                Math.max(0, moved.size() - MOST_PROCESSES),
                ChangeWords.said(c),
                by.stream().map(Attribution::by).toList(),
                a.hash(),
                b.hash()));
    }

    /** Whether the answers differ; that another edition was asked is no difference here. */
    private static boolean differs(Comparison c) {
        return !(c.processes().isEmpty()
                && c.gained().isEmpty()
                && c.lost().isEmpty()
                && c.reworded().isEmpty()
                && c.cautions().isEmpty()
                && c.doubts().isEmpty()
                && c.questions().isEmpty()
                && c.verifications().isEmpty());
    }
}

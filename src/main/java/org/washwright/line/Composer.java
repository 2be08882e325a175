package org.washwright.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.engine.Firings;
import org.washwright.engine.Inference;
import org.washwright.line.ProcessLine.Verdict;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Effect.Role;

/** Composes the line of each process from what rules ask for and forbid. */
public final class Composer {

    private final Edition edition;
    private final Inference lineRules;
    private final FactBase facts;
    private final Map<String, List<Firing>> taskFirings;
    private final Firings resolver;

    /**
     * A composer for one task.
     *
     * @param facts all facts, conclusions included
     * @param taskFirings firings of the rules over the task
     */
    public Composer(Edition edition, Inference lineRules, FactBase facts, List<Firing> taskFirings) {
        this.edition = edition;
        this.lineRules = lineRules;
        this.facts = facts;
        this.taskFirings = byProcess(taskFirings);
        this.resolver = new Firings(edition);
    }

    /** Firings by the processes that their findings concern: most concern few, and every process is composed. */
    private static Map<String, List<Firing>> byProcess(List<Firing> firings) {
        Map<String, List<Firing>> out = new HashMap<>();
        for (Firing firing : firings) {
            firing.findings().stream()
                    .flatMap(f -> f.targets().stream())
                    .distinct()
                    .forEach(p -> out.computeIfAbsent(p, k -> new ArrayList<>()).add(firing));
        }
        return out;
    }

    private <E extends Effect> List<Evidence<E>> ofTask(ProcessTerm process, Class<E> kind) {
        return Evidence.about(process.id(), taskFirings.getOrDefault(process.id(), List.of()), kind);
    }

    /**
     * The line of a process.
     *
     * @param firstFiring number of the first firing of line rules on it
     */
    public ProcessLine compose(ProcessTerm process, int firstFiring) {
        List<Evidence<Effect.RuleOut>> out = ofTask(process, Effect.RuleOut.class);
        List<Verdict> refusals = new ArrayList<>();
        out.stream().filter(e -> e.certain() && isMain(e)).forEach(e -> refusals.add(verdict("", e)));
        if (!refusals.isEmpty()) {
            return new ProcessLine(process, List.of(), List.of(), refusals, List.of(), List.of());
        }
        StageFacts stageFacts = new StageFacts(edition.types(), process);
        Sequence sequence = new Sequence(edition.catalogue());
        ofTask(process, Effect.Require.class).forEach(sequence::add);
        LineRun run = new LineRun(lineRules, resolver, facts, process, stageFacts, sequence, firstFiring);
        List<Firing> lineFirings = run.settle();
        ProcessLine judged = judge(process, sequence, stageFacts, lineFirings, out);
        return run.settled() ? judged : endless(judged, run.placing());
    }

    /** A line whose rules never stop asking for stages is out, or hangs on it when some of them are undecided. */
    private static ProcessLine endless(ProcessLine line, List<Firing> placing) {
        Verdict verdict = new Verdict(
                "The rules over its line keep asking for one more stage after another; they have to be mended.",
                placing.stream().map(Firing::n).toList());
        List<Verdict> refusals = new ArrayList<>(line.refusals());
        List<Verdict> conditions = new ArrayList<>(line.conditions());
        (placing.stream().allMatch(Firing::certain) ? refusals : conditions).add(verdict);
        return new ProcessLine(line.process(), line.steps(), line.firings(), refusals, conditions, line.facts());
    }

    private ProcessLine judge(
            ProcessTerm process,
            Sequence sequence,
            StageFacts stageFacts,
            List<Firing> lineFirings,
            List<Evidence<Effect.RuleOut>> taskOut) {
        List<Step> steps = sequence.inOrder();
        List<Verdict> refusals = new ArrayList<>();
        List<Verdict> conditions = new ArrayList<>();
        List<Evidence<Effect.RuleOut>> out = new ArrayList<>(taskOut);
        out.addAll(Evidence.about(process.id(), lineFirings, Effect.RuleOut.class));
        for (Evidence<Effect.RuleOut> e : out) {
            boolean surely = broken(e, steps, true);
            boolean perhaps = broken(e, steps, false);
            if (e.certain() && surely) {
                refusals.add(verdict(rolePrefix(e), e));
            } else if (perhaps) {
                conditions.add(verdict("May fall out. " + rolePrefix(e), e));
            }
        }
        for (Evidence<Effect.Require> e : sequence.impossible()) {
            Verdict v = verdict(
                    "No place is left for "
                            + edition.catalogue().name("stage", e.effect().stage()) + ": ",
                    e);
            (e.certain() ? refusals : conditions).add(v);
        }
        steps.stream()
                .filter(s -> !s.certain())
                .forEach(s -> s.reasons()
                        .forEach(e -> conditions.add(verdict(
                                ProcessLine.FURTHER_STAGE
                                        + s.stage().orElseThrow().term().name() + ". ",
                                e))));
        List<Evidence<Effect.Limit>> limits = ofTask(process, Effect.Limit.class);
        limits.addAll(Evidence.about(process.id(), lineFirings, Effect.Limit.class));
        Windows windows = new Windows(edition.catalogue(), process, limits);
        List<PlacedStage> placed =
                steps.stream().map(s -> windows.place(s, stageFacts.id(s))).toList();
        refusals.addAll(windows.refusals());
        conditions.addAll(windows.conditions());
        return new ProcessLine(
                process,
                placed,
                lineFirings,
                refusals.stream().distinct().toList(),
                conditions.stream().distinct().toList(),
                stageFacts.of(steps));
    }

    private static boolean isMain(Evidence<Effect.RuleOut> e) {
        return e.effect().role() == Role.MAIN || e.effect().role() == Role.ANYWHERE;
    }

    /** True when the main stage stands in the role: surely, or perhaps when uncertain stages fall away or come. */
    private static boolean broken(Evidence<Effect.RuleOut> e, List<Step> steps, boolean surely) {
        int main = 0;
        while (!steps.get(main).isMain()) {
            main++;
        }
        boolean cleaningBefore = steps.subList(0, main).stream().anyMatch(s -> cleans(s, !surely));
        boolean cleaningAfter = steps.subList(main + 1, steps.size()).stream().anyMatch(s -> cleans(s, !surely));
        return switch (e.effect().role()) {
            case MAIN, ANYWHERE -> true;
            case ALONE -> !cleaningBefore && !cleaningAfter;
            case FIRST -> !cleaningBefore;
            case LAST -> !cleaningAfter;
        };
    }

    private static boolean cleans(Step step, boolean onlyCertain) {
        return step.stage().map(t -> t.cleaning()).orElse(false) && (!onlyCertain || step.certain());
    }

    private static String rolePrefix(Evidence<Effect.RuleOut> e) {
        return switch (e.effect().role()) {
            case ALONE -> "No rule names a stage to clean beside it: ";
            case FIRST -> "No rule names a stage to clean before it: ";
            case LAST -> "No rule names a stage to clean after it: ";
            default -> "";
        };
    }

    private static Verdict verdict(String prefix, Evidence<?> e) {
        return new Verdict(prefix + e.finding().text(), List.of(e.n()));
    }
}

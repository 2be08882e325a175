package org.washwright.explain.whynot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.washwright.assessment.Outcome;
import org.washwright.engine.Fact;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;
import org.washwright.rule.Sign;

/** Says of any rule and any process what kept it from firing or standing on a task. */
public final class WhyNot {

    private final Outcome outcome;
    private final Edition edition;

    /** Looks at what an edition made of a task. */
    public WhyNot(Outcome outcome) {
        this.outcome = outcome;
        this.edition = outcome.edition();
    }

    /** What is looked at. */
    public Outcome outcome() {
        return outcome;
    }

    /** The rule of an id, if the edition has it. */
    public Optional<Rule> find(String id) {
        return edition.rules().stream().filter(r -> r.id().equalsIgnoreCase(id)).findFirst();
    }

    /** What became of every rule, in order of their ids. */
    public List<Outlook> rules() {
        return edition.rules().stream()
                .sorted(Comparator.comparing(Rule::id))
                .map(this::rule)
                .toList();
    }

    /** What became of a rule over tasks, without a word why. */
    State state(Rule rule) {
        return Nearest.of(rule, outcome.facts().all()).get(0).cost().state();
    }

    /** What became of a rule on the whole task; of a rule over lines, on the line where it came furthest. */
    public Outlook rule(Rule rule) {
        if (!rule.isLineRule()) {
            return outlook(rule, outcome.facts().all(), "");
        }
        List<Outlook> onLines = outcome.lines().stream()
                .filter(l -> !l.facts().isEmpty())
                .map(l -> rule(rule, l.process().id()))
                .toList();
        return onLines.stream()
                .min(Comparator.comparing(Outlook::state)
                        .thenComparing(o -> o.failing().size()))
                .orElseGet(() -> unseen(rule, "", "No process is left whose line it could look at."));
    }

    /**
     * What became of a rule as far as one process is concerned.
     *
     * @param process id of a process of the edition
     */
    public Outlook rule(Rule rule, String process) {
        List<Fact> facts = new ArrayList<>(outcome.facts().all());
        facts.removeIf(f -> f.type().name().equals(FactTypes.PROCESS) && !f.id().equals("process/" + process));
        if (rule.isLineRule()) {
            List<Fact> stages = outcome.line(process).map(ProcessLine::facts).orElse(List.of());
            if (stages.isEmpty()) {
                return unseen(rule, process, "No line was composed, as the process is out as main cleaning.");
            }
            facts.addAll(stages);
        }
        return outlook(rule, facts, process);
    }

    private Outlook outlook(Rule rule, List<Fact> facts, String process) {
        List<Nearest.Tuple> nearest = Nearest.of(rule, facts);
        ConditionWords words = new ConditionWords(edition, rule, facts);
        return new Outlook(
                rule.id(),
                rule.title(),
                nearest.get(0).cost().state(),
                RuleSentence.of(edition, rule).words(),
                process,
                "",
                nearest.stream().map(words::near).distinct().toList());
    }

    private Outlook unseen(Rule rule, String process, String note) {
        return new Outlook(
                rule.id(),
                rule.title(),
                State.FAILED,
                RuleSentence.of(edition, rule).words(),
                process,
                note,
                List.of());
    }

    /**
     * What keeps a process from standing, or from standing better.
     *
     * @param process id of a process of the edition
     * @throws java.util.NoSuchElementException when the edition has no such process
     */
    public ProcessOutlook process(String process) {
        ProcessLine line = outcome.line(process).orElseThrow();
        List<Outlook> against = new ArrayList<>();
        List<Outlook> silent = new ArrayList<>();
        edition.rules().stream().sorted(Comparator.comparing(Rule::id)).forEach(rule -> {
            if (speaksFor(rule, process)) {
                Outlook outlook = rule(rule, process);
                if (outlook.state() != State.FIRED && isAbout(outlook)) {
                    silent.add(outlook);
                }
            }
            if (speaksAgainst(rule, process) && fired(rule, process)) {
                against.add(rule(rule, process));
            }
        });
        ProcessOutlook brief = brief(line);
        return new ProcessOutlook(process, brief.name(), brief.status(), brief.reasons(), against, silent);
    }

    /** What a process falls out or hangs on, without a look at the rules that did not fire. */
    public ProcessOutlook brief(ProcessLine line) {
        List<ProcessOutlook.Reason> reasons = Stream.concat(line.refusals().stream(), line.conditions().stream())
                .map(v -> new ProcessOutlook.Reason(v.text(), rulesOf(v)))
                .toList();
        return new ProcessOutlook(
                line.process().id(), line.process().term().name(), line.status().word(), reasons, List.of(), List.of());
    }

    private List<String> rulesOf(ProcessLine.Verdict verdict) {
        return outcome.firings().stream()
                .filter(f -> verdict.firings().contains(f.n()))
                .map(f -> f.rule().id())
                .distinct()
                .toList();
    }

    private boolean fired(Rule rule, String process) {
        return outcome.firings().stream()
                .anyMatch(f -> f.rule().id().equals(rule.id())
                        && f.findings().stream().anyMatch(x -> x.targets().contains(process)));
    }

    /** A rule whose nearest facts fail on the process itself is about other processes, whatever the task. */
    private static boolean isAbout(Outlook outlook) {
        return outlook.failing().stream().noneMatch(Outlook.Condition::ofProcess);
    }

    private boolean speaksFor(Rule rule, String process) {
        return rule.effects().stream()
                .anyMatch(e -> e instanceof Effect.Score s && s.support() && concerns(rule, s.target(), process));
    }

    private boolean speaksAgainst(Rule rule, String process) {
        return rule.effects().stream()
                .anyMatch(e -> e instanceof Effect.RuleOut r && concerns(rule, r.target(), process)
                        || e instanceof Effect.Score s && !s.support() && concerns(rule, s.target(), process));
    }

    private boolean concerns(Rule rule, Effect.Target target, String process) {
        return target instanceof Effect.Target.Node n
                ? edition.catalogue().members(n.id()).contains(process)
                : rule.patterns()
                                .get(((Effect.Target.Matched) target).pattern())
                                .sign()
                        == Sign.POSITIVE;
    }
}

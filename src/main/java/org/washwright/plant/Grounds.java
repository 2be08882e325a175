package org.washwright.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.washwright.assessment.Outcome;
import org.washwright.catalogue.StageTerm;
import org.washwright.engine.Firing;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.plant.PlantWeek.Reason;
import org.washwright.rule.Effect;

/** Gathers what blocks one task, what it hangs on and what to set, each with the rules behind it. */
final class Grounds {

    private final String process;
    private final Map<Integer, Firing> firings = new HashMap<>();
    private final List<Reason> blocks = new ArrayList<>();
    private final List<Reason> conditions = new ArrayList<>();
    private final List<Reason> settings = new ArrayList<>();

    Grounds(Outcome outcome, String process) {
        this.process = process;
        outcome.firings().forEach(f -> firings.put(f.n(), f));
    }

    void block(String text, List<Integer> by) {
        add(blocks, text, by);
    }

    void condition(String text, List<Integer> by) {
        add(conditions, text, by);
    }

    void set(String text, List<Integer> by) {
        add(settings, text, by);
    }

    /** Blocks where something surely holds, else makes it a condition. */
    void blockIf(boolean surely, String text, List<Integer> by) {
        add(surely ? blocks : conditions, text, by);
    }

    void verdict(boolean blocks, ProcessLine.Verdict verdict) {
        blockIf(blocks, verdict.text(), verdict.firings());
    }

    private void add(List<Reason> to, String text, List<Integer> by) {
        Reason reason = new Reason(
                text,
                by.stream()
                        .map(firings::get)
                        .filter(Objects::nonNull)
                        .map(f -> f.rule().id())
                        .distinct()
                        .toList());
        if (!to.contains(reason)) {
            to.add(reason);
        }
    }

    /** Why the line holds a stage, in the words of the rules, with a colon in front; a full stop when no rule says. */
    String whyNeeded(PlacedStage stage) {
        Set<String> ids = new HashSet<>(List.of(stage.stage().map(StageTerm::id).orElse(""), stage.insteadOf()));
        List<String> why = Stream.concat(
                        said(stage.firings(), e -> e instanceof Effect.Require r && ids.contains(r.stage())),
                        said(stage.replacing(), e -> e instanceof Effect.Limit))
                .distinct()
                .toList();
        return why.isEmpty() ? "." : ": " + String.join(" ", why);
    }

    /** Why a window ends where it does; the stage's own range when no rule narrowed it. */
    String whyEnds(List<Integer> by) {
        return by.isEmpty()
                ? "the stage's own range"
                : said(by, e -> e instanceof Effect.Limit)
                        .findFirst()
                        .map(Grounds::withoutStop)
                        .orElse("a rule");
    }

    private Stream<String> said(List<Integer> by, Predicate<Effect> kind) {
        return by.stream()
                .map(firings::get)
                .filter(Objects::nonNull)
                .flatMap(f -> f.findings().stream())
                .filter(f -> kind.test(f.effect()) && f.targets().contains(process))
                .map(f -> f.text());
    }

    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    List<Reason> blocks() {
        return blocks;
    }

    List<Reason> conditions() {
        return conditions;
    }

    List<Reason> settings() {
        return settings;
    }
}

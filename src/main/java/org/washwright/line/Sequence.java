package org.washwright.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.engine.Fact;
import org.washwright.rule.Effect;

/**
 * The steps of one line as rules ask for them. A stage asked for twice is one step where both places can be had by one,
 * else two.
 */
final class Sequence {

    private final Catalogue catalogue;
    private final Map<String, Step> steps = new TreeMap<>();
    private final List<Evidence<Effect.Require>> impossible = new ArrayList<>();

    Sequence(Catalogue catalogue) {
        this.catalogue = catalogue;
        steps.put(Step.MAIN, new Step(Step.MAIN, Optional.empty()));
    }

    /**
     * Adds what a rule asks for.
     *
     * @return true when the sequence has changed
     */
    boolean add(Evidence<Effect.Require> required) {
        String stage = required.effect().stage();
        String after = key(required, required.effect().after());
        String before = key(required, required.effect().before());
        List<Step> same = steps.values().stream()
                .filter(s -> s.stage().map(t -> t.id().equals(stage)).orElse(false))
                .toList();
        for (Step step : same) {
            Step with = placed(step.copy(), after, before);
            if (StepOrder.of(replacing(with)).isPresent()) {
                boolean known = step.reasons().stream().anyMatch(e -> same(e, required))
                        && with.behind().equals(step.behind())
                        && with.before().equals(step.before());
                if (!known) {
                    if (with.reasons().stream().noneMatch(e -> same(e, required))) {
                        with.reasons().add(required);
                    }
                    steps.put(with.key(), with);
                }
                return !known;
            }
        }
        String key = same.isEmpty() ? stage : stage + "#" + (same.size() + 1);
        Step fresh = placed(new Step(key, Optional.of(catalogue.stages().get(stage))), after, before);
        fresh.reasons().add(required);
        if (StepOrder.of(replacing(fresh)).isEmpty()) {
            if (impossible.stream().noneMatch(e -> same(e, required))) {
                impossible.add(required);
            }
            return false;
        }
        steps.put(key, fresh);
        return true;
    }

    private static boolean same(Evidence<Effect.Require> a, Evidence<Effect.Require> b) {
        return a.n() == b.n() && a.effect().equals(b.effect());
    }

    /** Key of the step that a place in a line refers to; empty for none. */
    private static String key(Evidence<Effect.Require> required, Optional<Effect.StageRef> ref) {
        if (ref.isEmpty()) {
            return "";
        }
        if (ref.get() instanceof Effect.StageRef.Named n) {
            return n.id();
        }
        int pattern = ((Effect.StageRef.Matched) ref.get()).pattern();
        String id = required.firing().facts().get(pattern).map(Fact::id).orElse("");
        return id.substring(id.lastIndexOf('/') + 1);
    }

    private static Step placed(Step step, String after, String before) {
        if (!after.isEmpty() && !after.equals(step.key())) {
            step.behind().add(after);
        }
        if (!before.isEmpty() && !before.equals(step.key())) {
            step.before().add(before);
        }
        return step;
    }

    private List<Step> replacing(Step step) {
        Map<String, Step> copy = new TreeMap<>(steps);
        copy.put(step.key(), step);
        return List.copyOf(copy.values());
    }

    /** Steps in order. */
    List<Step> inOrder() {
        return StepOrder.of(List.copyOf(steps.values())).orElseThrow();
    }

    /** What was asked for and can't be placed. */
    List<Evidence<Effect.Require>> impossible() {
        return impossible;
    }
}

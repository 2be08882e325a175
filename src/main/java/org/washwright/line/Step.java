package org.washwright.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.catalogue.StageTerm;
import org.washwright.rule.Effect;

/** One stage of a line in the making: which stage, why, and behind and before which others it must stand. */
final class Step {

    /** Key of the main stage. */
    static final String MAIN = Effect.StageRef.MAIN;

    private final String key;
    private final Optional<StageTerm> stage;
    private final List<Evidence<Effect.Require>> reasons = new ArrayList<>();
    private final TreeSet<String> behind = new TreeSet<>();
    private final TreeSet<String> before = new TreeSet<>();

    Step(String key, Optional<StageTerm> stage) {
        this.key = key;
        this.stage = stage;
    }

    /** Unique in its line: {@code main}, a stage id, or a stage id with a number. */
    String key() {
        return key;
    }

    /** The stage; empty for the main one. */
    Optional<StageTerm> stage() {
        return stage;
    }

    boolean isMain() {
        return stage.isEmpty();
    }

    int position() {
        return stage.map(StageTerm::position).orElse(StageTerm.MAIN);
    }

    /** True when it is surely in the line. */
    boolean certain() {
        return isMain() || reasons.stream().anyMatch(Evidence::certain);
    }

    List<Evidence<Effect.Require>> reasons() {
        return reasons;
    }

    /** Keys of steps that it must stand behind. */
    TreeSet<String> behind() {
        return behind;
    }

    /** Keys of steps that it must stand before. */
    TreeSet<String> before() {
        return before;
    }

    Step copy() {
        Step copy = new Step(key, stage);
        copy.reasons.addAll(reasons);
        copy.behind.addAll(behind);
        copy.before.addAll(before);
        return copy;
    }
}

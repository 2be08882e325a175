package org.washwright.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A release that goes on: which steps are done, and why it ended if it did. Read while another thread writes it. */
final class ReleaseWork {
    private volatile int done;
    private volatile String detail = "";
    private volatile Optional<RuntimeException> refusal = Optional.empty();

    /** A step as told to people and programs. */
    record Step(String step, String words, String state, String detail) {}

    void done(ReleaseStep step) {
        done = step.ordinal() + 1;
        detail = "";
    }

    /** Says how far the step is that goes on. */
    void say(String how) {
        detail = how;
    }

    void refused(RuntimeException why) {
        refusal = Optional.of(why);
    }

    Optional<RuntimeException> refusal() {
        return refusal;
    }

    /** Whether nothing more will happen. */
    public boolean isOver() {
        return refusal.isPresent() || done == ReleaseStep.values().length;
    }

    public List<Step> steps() {
        int now = done;
        boolean ended = refusal.isPresent();
        return Arrays.stream(ReleaseStep.values())
                .map(step -> new Step(
                        step.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                        step.words(),
                        step.ordinal() < now
                                ? "done"
                                : step.ordinal() > now ? "to come" : ended ? "ended here" : "goes on",
                        step.ordinal() == now ? detail : ""))
                .toList();
    }
}

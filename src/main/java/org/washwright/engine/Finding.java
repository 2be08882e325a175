package org.washwright.engine;

import java.util.List;
import org.washwright.rule.Effect;

/**
 * One effect of one firing.
 *
 * @param effect the effect
 * @param targets ids of the processes concerned; empty when it concerns the task as a whole
 * @param text the reason with its values filled in
 */
public record Finding(Effect effect, List<String> targets, String text) {

    /** Keeps a copy. */
    public Finding {
        targets = List.copyOf(targets);
    }
}

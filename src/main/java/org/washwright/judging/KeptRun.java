package org.washwright.judging;

import java.util.UUID;
import org.washwright.impact.replay.Impact;

/**
 * A run that was kept.
 *
 * @param edition the later edition
 * @param before the earlier one
 * @param impact what came of it
 * @param by who asked for it
 * @param at when, ISO 8601, UTC
 */
record KeptRun(UUID edition, UUID before, Impact impact, String by, String at) {

    /** Day and minute. */
    public String minute() {
        return at.substring(0, 10) + " " + at.substring(11, 16);
    }
}

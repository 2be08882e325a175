package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same law as in {@link NarrowingTest}, on more rules and tasks. */
@Tag("slow")
class NarrowingIT {

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32})
    void sayingMoreNeverTakesBackWhatWasDecided(long seed) {
        NarrowingLaw.Outcome outcome = NarrowingLaw.tried(seed, 40);
        assertTrue(outcome.broken().isEmpty(), () -> String.join("\n", outcome.broken()));
        // Own earlier output, half of it.
        assertTrue(outcome.steps() > 200, outcome.steps() + " steps");
    }
}

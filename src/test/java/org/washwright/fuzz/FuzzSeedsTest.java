package org.washwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the fuzzer starts from, and whatever it once found, keeps every promise. */
class FuzzSeedsTest {

    private static final Duration HANGS = Duration.ofSeconds(60);

    @ParameterizedTest
    @ValueSource(strings = {"Drl", "Table", "Tree", "Catalogue", "Bundle", "Task", "RoundTrip", "Quantity"})
    void seedsKeepEveryPromise(String target) throws IOException {
        List<byte[]> seeds = Seeds.of(target);
        assertTrue(seeds.size() >= 2, seeds.size() + " seeds");
        assertTimeoutPreemptively(HANGS, () -> seeds.forEach(Targets.all().get(target)::accept));
    }

    @Test
    void everyTargetIsNamedAbove() {
        assertEquals(
                Set.of("Drl", "Table", "Tree", "Catalogue", "Bundle", "Task", "RoundTrip", "Quantity"),
                Targets.all().keySet());
    }

    @Test
    void aBrokenPromiseIsAnError() {
        assertThrows(AssertionError.class, () -> Promise.holds(false, "broken"));
    }
}

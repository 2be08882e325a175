package org.washwright.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RecentTest {
    @Test
    void what_was_not_used_longest_goes_first() {
        Recent<String> recent = new Recent<>(2);
        recent.get("a", key -> "A");
        recent.get("b", key -> "B");
        recent.get("a", key -> "not made again");
        recent.get("c", key -> "C");

        assertEquals(2, recent.size());
        assertEquals("A", recent.find("a").orElseThrow());
        assertTrue(recent.find("b").isEmpty());
    }
}

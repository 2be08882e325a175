package org.washwright.hostile;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostic;
import org.washwright.hostile.Bombs.Bomb;

/** What would fill a stack or memory, or keep a reader busy for ever, is refused at once, with its line. */
@Tag("slow")
class HostileBombsIT {

    static List<Bomb> deep() {
        return Bombs.deep();
    }

    static List<Bomb> broken() {
        return Bombs.broken();
    }

    static List<Bomb> large() {
        return Bombs.large();
    }

    @ParameterizedTest
    @MethodSource("deep")
    void whatNestsOrChainsWithoutEndIsRefused(Bomb bomb) {
        refusedWithLine(bomb);
    }

    @ParameterizedTest
    @MethodSource("broken")
    void whatIsNoProperTextIsRefused(Bomb bomb) {
        refusedWithLine(bomb);
    }

    @ParameterizedTest
    @MethodSource("large")
    void whatIsTooLargeOrGrowsIsRefused(Bomb bomb) {
        refusedWithLine(bomb);
    }

    private static void refusedWithLine(Bomb bomb) {
        List<Diagnostic> found = Verdict.refused(bomb.file(), bomb.bytes());
        boolean wholeTask = bomb.bytes().length > 1_000_000 && bomb.file().startsWith("task");
        if (!wholeTask) {
            assertTrue(found.stream().anyMatch(d -> d.place().line() > 0), found::toString);
        }
        assertFalse(found.size() > 501, found.size() + " messages");
    }
}

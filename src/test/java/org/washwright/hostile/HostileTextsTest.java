package org.washwright.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever tries to run, to hide, to hang or to break out is refused where it stands, and never runs. */
class HostileTextsTest {

    private static final Set<String> CATEGORIES = Set.of(
            "annotations",
            "catalogues",
            "consequences",
            "constraints",
            "cycles",
            "escapes",
            "file-declarations",
            "joins",
            "look-alikes",
            "names",
            "other-files",
            "patterns",
            "reasons",
            "rule-attributes",
            "tables",
            "tasks",
            "trees",
            "yaml");

    static List<HostileText> texts() {
        return HostileCorpus.all();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void isRefusedAtItsLineAndNeverRuns(HostileText text) {
        Verdict.refused(text);
    }

    @Test
    void theCorpusHoldsEveryCategoryAndNoTextTwice() {
        Set<String> categories =
                texts().stream().map(HostileText::category).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(CATEGORIES), categories);
        Set<String> seen = new HashSet<>();
        texts().forEach(t -> assertTrue(seen.add(t.file() + t.text()), "twice: " + t));
        assertTrue(texts().size() >= 300, texts().size() + " texts");
    }
}

package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** A rule that reads a value and asks for it all the same doubts it; one that asks for what it does not read does not. */
class DoubtsTest {

    private static final Edition EDITION =
            SmallEdition.with(rule("DO-01", "Material(hardness > \"60 HRC\")", "So hard?")
                    + rule("AS-01", "exists Soil()", "How hard is it?"));

    private static String rule(String id, String when, String reason) {
        return "rule \"" + id + "\"\n@id(\"" + id + "\") @basis(\"common practice\")\nwhen\n" + when
                + "\nthen\nask(\"Material.hardness\", \"" + reason + "\");\nend\n";
    }

    private static FrozenAnswer answer(String materials) {
        return Assessor.of(EDITION, ReferenceInterpreter.factory())
                .assess(
                        Starter.task(EDITION, "title: t\nsoils: [soil-a]\nmaterials: [" + materials + "]\n"),
                        Starter.WISHES);
    }

    private static List<String> doubts(FrozenAnswer answer) {
        return answer.answer().doubts().stream().map(Answer.Sentence::text).toList();
    }

    @Test
    void what_a_rule_reads_and_asks_for_all_the_same_is_doubted_once() {
        FrozenAnswer answer = answer("{hardness: 65 HRC}, {hardness: 66 HRC}");
        assertEquals(List.of("So hard?"), doubts(answer));
        assertEquals(2, answer.answer().doubts().get(0).firings().size());
        assertTrue(new String(answer.bytes(), StandardCharsets.UTF_8).contains("\"doubts\":[{"));
    }

    @Test
    void what_is_not_known_is_asked_for_and_not_doubted() {
        FrozenAnswer open = answer("{substrate: substrate-a}");
        assertEquals(List.of(), doubts(open));
        assertTrue(
                open.answer().questions().stream().anyMatch(q -> q.consequence().contains("How hard is it?")));
    }

    @Test
    void an_answer_without_a_doubt_says_nothing_of_doubts() {
        FrozenAnswer plain = answer("{hardness: 40 HRC}");
        assertEquals(List.of(), doubts(plain));
        assertFalse(new String(plain.bytes(), StandardCharsets.UTF_8).contains("doubts"));
    }
}

package org.washwright.explain.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** The proof check on one task; on all demo tasks and generated ones in the long tier. */
class ProofCheckTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Edition EDITION = Starter.edition();
    private static final Assessor ASSESSOR = Starter.swept();
    private static final CleaningTask TASK = Starter.demoTasks().get("bearing-rings.yaml");
    private static final ProofCheck CHECK = new ProofCheck(EDITION);

    private static FrozenAnswer answer(Wishes wishes) {
        return ASSESSOR.assess(TASK, wishes);
    }

    @Test
    void anHonestAnswerHoldsWhateverWasWished() throws IOException {
        for (Wishes wishes : List.of(
                Starter.WISHES,
                new Wishes(Map.of("cost", 70.0), Map.of(), "2026-02-01", 3),
                new Wishes(Map.of(), Map.of("technology/cost", 5.0), Map.of(), "2026-02-01", 3))) {
            Verdict verdict = CHECK.check(answer(wishes).bytes(), 10);
            assertTrue(verdict.holds(), verdict.breaches().toString());
            assertEquals(verdict.hash(), verdict.derivedHash());
            assertEquals(List.of(), verdict.notes());
        }
    }

    @Test
    void twentyTamperingsWithAllHashesComputedAnewAreFound() throws IOException {
        byte[] bytes = answer(Starter.WISHES).bytes();
        Tampering tampering = new Tampering(new Random(7));
        for (int i = 0; i < 20; i++) {
            Tampering.Tampered tampered = tampering.tamper(bytes);
            Verdict verdict = CHECK.check(tampered.bytes(), 1000);
            assertFalse(verdict.holds(), tampered.what());
            assertFalse(verdict.breaches().isEmpty(), tampered.what());
        }
    }

    @Test
    void aChangedSentenceIsNamedByItsPlaceWithWhatFollowsInstead() throws IOException {
        FrozenAnswer honest = answer(Starter.WISHES);
        ObjectNode root = (ObjectNode) JSON.readTree(honest.bytes());
        ((ObjectNode) root.at("/ruledOut/0/reasons/0")).put("text", "It is too expensive.");
        Verdict verdict = CHECK.check(Tampering.sealed(root), 10);
        assertEquals(1, verdict.breaches().size());
        Breach breach = verdict.breaches().get(0);
        assertEquals("/ruledOut/0/reasons/0/text", breach.at());
        assertEquals("\"It is too expensive.\"", breach.stated());
        assertTrue(
                breach.derived()
                        .contains(honest.answer()
                                .ruledOut()
                                .get(0)
                                .reasons()
                                .get(0)
                                .text()),
                breach.toString());
        assertEquals(Step.LINES, breach.step());
        assertTrue(breach.about().startsWith("ruled out “"), breach.about());
    }

    @Test
    void aChangedFactComesBeforeAllThatFollowsFromIt() throws IOException {
        ObjectNode root = (ObjectNode) JSON.readTree(answer(Starter.WISHES).bytes());
        ((ObjectNode) root.at("/facts/0/attributes/0")).put("value", "something else");
        ((ObjectNode) root.at("/headline")).put("sentence", "Wipe it.");
        Verdict verdict = CHECK.check(Tampering.sealed(root), 1);
        assertEquals(Step.FACTS, verdict.breaches().get(0).step());
        assertEquals(1, verdict.more());
    }

    @Test
    void theAnswerToOneTaskUnderTheRequestOfAnotherIsFound() throws IOException {
        ObjectNode root = (ObjectNode) JSON.readTree(answer(Starter.WISHES).bytes());
        FrozenAnswer other = ASSESSOR.assess(Starter.task(EDITION, "title: Plate\n"), Starter.WISHES);
        root.set("request", JSON.readTree(other.bytes()).get("request"));
        assertFalse(CHECK.check(Tampering.sealed(root), 1).holds());
    }

    @Test
    void theSameContentWrittenOtherwiseIsNotTheSameFile() throws IOException {
        byte[] pretty = JSON.writerWithDefaultPrettyPrinter()
                .writeValueAsBytes(JSON.readTree(answer(Starter.WISHES).bytes()));
        Verdict verdict = CHECK.check(pretty, 10);
        assertEquals(
                List.of(Step.BYTES),
                verdict.breaches().stream().map(Breach::step).toList());
    }

    @Test
    void whatIsNoAnswerIsRefusedInWords() throws IOException {
        for (String text : List.of("", "[]", "nonsense", "{\"a\":", "17")) {
            assertThrows(IOException.class, () -> CHECK.check(text.getBytes(StandardCharsets.UTF_8), 10), text);
        }
        for (String text : List.of("{}", "{\"request\":{}}", "{\"request\":{\"task\":[]}}", "{\"facts\":7}")) {
            Verdict verdict = CHECK.check(text.getBytes(StandardCharsets.UTF_8), 10);
            assertFalse(verdict.holds(), text);
            assertEquals(Step.REQUEST, verdict.breaches().get(0).step(), text);
        }
    }

    @Test
    void anotherEditionIsNamed() throws IOException {
        Verdict verdict = new ProofCheck(SmallEdition.read(SmallEdition.files(SmallEdition.withFewRules())))
                .check(answer(Starter.WISHES).bytes(), 3);
        assertFalse(verdict.holds());
        assertTrue(
                verdict.notes().get(0).startsWith("The answer names another edition"),
                verdict.notes().toString());
    }
}

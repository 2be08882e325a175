package org.washwright.library;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostic;
import org.washwright.document.Message;
import org.washwright.generate.Starter;
import org.washwright.rulebook.Bundle;

/** What another program gets is what the commands and the service give. */
class TaskEvaluatorTest {

    private static final TaskEvaluator QUICK = TaskEvaluator.of(Starter.edition(), Engine.QUICK);

    @ParameterizedTest
    @EnumSource(
            value = Engine.class,
            names = {"QUICK", "PLAIN"})
    void every_demo_task_gets_the_bytes_and_the_hash_that_the_assessor_gives(Engine engine) throws Exception {
        TaskEvaluator evaluator = TaskEvaluator.open(Starter.FOLDER, engine);
        Map<String, String> texts = Starter.demoTexts();
        assertFalse(texts.isEmpty());
        texts.forEach((name, text) -> {
            FrozenAnswer expected = Starter.answer(text);
            Evaluation.Answered answered = answered(evaluator.evaluate(text, Starter.WISHES));
            assertArrayEquals(expected.bytes(), answered.bytes(), name);
            assertEquals(expected.hash(), answered.hash(), name);
            assertEquals(Starter.task(text).title(), answered.title(), name);
        });
    }

    @Test
    void text_bytes_and_a_task_that_was_read_already_get_the_same_answer() {
        String text = Starter.demoTexts().values().iterator().next();
        String hash = Starter.answer(text).hash();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        assertEquals(hash, answered(QUICK.evaluate(text, Starter.WISHES)).hash());
        assertEquals(hash, answered(QUICK.evaluate(bytes, Starter.WISHES)).hash());
        assertEquals(
                hash,
                answered(QUICK.evaluate("clips.yaml", bytes, Starter.WISHES)).hash());
        assertEquals(
                hash,
                answered(QUICK.evaluate(Starter.task(text), Starter.WISHES)).hash());
    }

    @Test
    void a_bundle_and_its_folder_answer_alike() {
        TaskEvaluator bundle = TaskEvaluator.open(Bundle.starter().zip(), Engine.QUICK);
        String text = "title: a";
        assertEquals(
                answered(QUICK.evaluate(text, Starter.WISHES)).hash(),
                answered(bundle.evaluate(text, Starter.WISHES)).hash());
        assertEquals(Starter.edition().textHash(), bundle.edition().textHash());
    }

    @Test
    void a_task_with_three_errors_is_refused_with_all_three_and_their_places() {
        String task = "title: a\npart: {mass: 3 m}\nmaterials:\n  - {substrate: unobtainium}\nnonsense: 1\n";
        Evaluation.Refused refused =
                refused(QUICK.evaluate("three.yaml", task.getBytes(StandardCharsets.UTF_8), Starter.WISHES));
        assertEquals(
                Set.of(2, 4, 5),
                refused.diagnostics().stream().map(d -> d.place().line()).collect(Collectors.toSet()),
                refused.diagnostics()::toString);
        refused.diagnostics().forEach(d -> {
            assertEquals("three.yaml", d.place().file());
            assertFalse(d.advice().isBlank(), d::toString);
        });
    }

    @Test
    void wishes_that_no_task_can_have_are_told_before_any_task_is_asked() {
        Wishes wishes = new Wishes(Map.of("beauty", 1.0), Map.of("hours", "1 kg"), "someday", 0);
        List<Diagnostic> wrong = QUICK.wrongWith(wishes);
        assertTrue(wrong.size() >= 3, wrong::toString);
        assertEquals(wrong, refused(QUICK.evaluate("title: a", wishes)).diagnostics());
        assertEquals(List.of(), QUICK.wrongWith(Starter.WISHES));
    }

    @Test
    void an_edition_with_errors_is_unusable_and_says_every_one() {
        byte[] broken = Bundle.starter()
                .with("rules/broken.drl", "rule \"no end\"\n when\n")
                .with("grading.yaml", "areas: 7\n")
                .zip();
        UnusableEdition thrown = assertThrows(UnusableEdition.class, () -> TaskEvaluator.open(broken, Engine.QUICK));
        Set<String> files =
                thrown.diagnostics().stream().map(d -> d.place().file()).collect(Collectors.toSet());
        assertTrue(files.containsAll(Set.of("rules/broken.drl", "grading.yaml")), files::toString);
        assertTrue(thrown.getMessage().contains(thrown.diagnostics().get(0).toString()), thrown.getMessage());
    }

    @Test
    void bytes_that_are_no_bundle_are_an_unusable_edition_and_a_path_to_nothing_is_a_failed_read() {
        UnusableEdition thrown =
                assertThrows(UnusableEdition.class, () -> TaskEvaluator.open(new byte[] {1, 2}, Engine.QUICK));
        assertFalse(thrown.diagnostics().isEmpty());
        assertThrows(
                NoSuchFileException.class, () -> TaskEvaluator.open(Path.of("rules", "nowhere.zip"), Engine.QUICK));
    }

    @Test
    void tasks_of_an_iterator_are_answered_only_as_they_are_asked_for() {
        List<String> taken = new ArrayList<>();
        Iterator<String> tasks = List.of("title: a", "title: [", "title: c").stream()
                .peek(taken::add)
                .iterator();
        Iterator<Evaluation> answers = QUICK.evaluateAll(tasks, Starter.WISHES);
        assertEquals(List.of(), taken);
        assertEquals("a", answered(answers.next()).title());
        assertEquals(List.of("title: a"), taken);
        Evaluation.Refused second = refused(answers.next());
        assertEquals(Message.BROKEN_YAML, second.diagnostics().get(0).message());
        assertEquals("c", answered(answers.next()).title());
        assertFalse(answers.hasNext());
    }

    private static Evaluation.Answered answered(Evaluation evaluation) {
        return assertInstanceOf(Evaluation.Answered.class, evaluation, evaluation::toString);
    }

    private static Evaluation.Refused refused(Evaluation evaluation) {
        return assertInstanceOf(Evaluation.Refused.class, evaluation);
    }
}

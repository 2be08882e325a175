package org.washwright.library;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.generate.Starter;

class TaskEvaluatorTest {

    private static final byte[] BUNDLE = Starter.files().toZip();

    @Test
    void folder_and_bundle_give_the_answer_of_the_command() throws Exception {
        byte[] expected = Starter.answer("title: a").bytes();
        for (TaskEvaluator evaluator :
                List.of(TaskEvaluator.open(Starter.FOLDER, Engine.QUICK), TaskEvaluator.open(BUNDLE, Engine.PLAIN))) {
            Evaluation.Answered answered =
                    assertInstanceOf(Evaluation.Answered.class, evaluator.evaluate("title: a", Starter.WISHES));
            assertArrayEquals(expected, answered.bytes());
            assertEquals("a", answered.title());
        }
    }

    @Test
    void a_task_that_is_wrong_is_refused_with_everything_that_is_wrong() {
        TaskEvaluator evaluator = TaskEvaluator.of(Starter.edition(), Engine.PLAIN);
        Evaluation.Refused refused = assertInstanceOf(
                Evaluation.Refused.class, evaluator.evaluate("part: {mass: 3 bananas}", Starter.WISHES));
        assertEquals(
                Set.of(Message.UNKNOWN_UNIT, Message.NO_TITLE),
                Set.copyOf(refused.diagnostics().stream().map(d -> d.message()).toList()));
    }

    @Test
    void wishes_are_looked_at_without_any_task() {
        TaskEvaluator evaluator = TaskEvaluator.of(Starter.edition(), Engine.PLAIN);
        assertEquals(List.of(), evaluator.wrongWith(Starter.WISHES));
        Wishes wrong = new Wishes(Map.of("environmnt", 1.0), Map.of(), "someday", 0);
        assertEquals(2, evaluator.wrongWith(wrong).size());
    }

    @Test
    void an_edition_with_errors_and_none_at_all_are_told_apart() {
        UnusableEdition unusable =
                assertThrows(UnusableEdition.class, () -> TaskEvaluator.open(new byte[] {1, 2}, Engine.PLAIN));
        assertEquals(Message.BROKEN_ZIP, unusable.diagnostics().get(0).message());
        assertThrows(NoSuchFileException.class, () -> TaskEvaluator.open(Path.of("nowhere.zip"), Engine.PLAIN));
        assertThrows(UnusableEdition.class, () -> SharedEvaluators.of(new byte[] {1, 2}, Engine.PLAIN));
    }

    @Test
    void many_threads_share_one_evaluator_of_an_edition_however_it_comes() throws Exception {
        Set<TaskEvaluator> seen = ConcurrentHashMap.newKeySet();
        IntStream.range(0, 16).parallel().forEach(i -> seen.add(SharedEvaluators.of(BUNDLE, Engine.PLAIN)));
        seen.add(SharedEvaluators.of(Starter.FOLDER, Engine.PLAIN));
        assertEquals(1, seen.size());
        assertNotSame(seen.iterator().next(), SharedEvaluators.of(BUNDLE, Engine.QUICK));
        assertSame(seen.iterator().next(), SharedEvaluators.of(BUNDLE, Engine.PLAIN));
    }

    @Test
    void a_function_over_partitions_travels_as_bytes_and_answers_as_rows_are_asked_for() throws Exception {
        Wishes wishes = new Wishes(Map.of("environment", 3.0), Map.of(), "2026-01-01", 0);
        ByteArrayOutputStream sent = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(sent)) {
            out.writeObject(new PartitionEvaluator(BUNDLE, Engine.PLAIN, wishes));
        }
        PartitionEvaluator arrived;
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(sent.toByteArray()))) {
            arrived = (PartitionEvaluator) in.readObject();
        }
        Iterator<String> rows = List.of("title: a", "title: [", "title: b").iterator();
        Iterator<Evaluation> results = arrived.apply(rows);
        Evaluation.Answered first = (Evaluation.Answered) results.next();
        assertTrue(rows.hasNext(), "rows are taken one by one");
        assertEquals(
                Starter.interpreted().assess(Starter.task("title: a"), wishes).hash(), first.hash());
        assertInstanceOf(Evaluation.Refused.class, results.next());
        assertEquals("b", ((Evaluation.Answered) results.next()).title());
    }

    @Test
    void the_starter_packed_into_the_program_is_the_one_that_stands_in_the_source() throws Exception {
        Diagnostics diagnostics = new Diagnostics();
        assertEquals(
                Starter.files().textHash(), PackedStarter.files(diagnostics).textHash());
        assertEquals(List.of(), diagnostics.all());
    }
}

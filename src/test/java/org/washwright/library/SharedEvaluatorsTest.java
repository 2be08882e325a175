package org.washwright.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.assessment.Wishes;
import org.washwright.exchange.EditionFiles;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;

/** What the workers of a distributed job rely on: one load a JVM, and a function that travels. */
@Timeout(60)
class SharedEvaluatorsTest {

    @Test
    void eight_threads_that_ask_for_a_new_edition_at_once_get_one_and_the_same_evaluator() throws Exception {
        byte[] bundle = bundle("eight threads");
        CyclicBarrier start = new CyclicBarrier(8);
        ExecutorService pool = Executors.newFixedThreadPool(8);
        try {
            List<Future<TaskEvaluator>> asked = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                asked.add(pool.submit(() -> {
                    start.await();
                    return SharedEvaluators.of(bundle.clone(), Engine.QUICK);
                }));
            }
            Set<TaskEvaluator> got = Collections.newSetFromMap(new IdentityHashMap<>());
            for (Future<TaskEvaluator> f : asked) {
                got.add(f.get());
            }
            assertEquals(1, got.size());
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void the_text_of_an_edition_decides_and_not_how_it_is_packed(@TempDir Path folder) throws Exception {
        byte[] bundle = bundle("packed twice");
        byte[] otherwise = stored("packed twice");
        assertNotEquals(bundle.length, otherwise.length);
        TaskEvaluator evaluator = SharedEvaluators.of(bundle, Engine.QUICK);
        assertSame(evaluator, SharedEvaluators.of(otherwise, Engine.QUICK));
        Path file = Files.write(folder.resolve("edition.zip"), bundle);
        assertSame(evaluator, SharedEvaluators.of(file, Engine.QUICK));
        assertNotSame(evaluator, SharedEvaluators.of(bundle, Engine.PLAIN));
        assertNotSame(evaluator, SharedEvaluators.of(bundle("another text"), Engine.QUICK));
    }

    @Test
    void the_edition_not_asked_for_longest_is_let_go_first() {
        byte[] stays = bundle("stays");
        byte[] goes = bundle("goes");
        TaskEvaluator kept = SharedEvaluators.of(stays, Engine.PLAIN);
        TaskEvaluator gone = SharedEvaluators.of(goes, Engine.PLAIN);
        for (int i = 0; i < SharedEvaluators.KEPT - 1; i++) {
            SharedEvaluators.of(bundle("filler " + i), Engine.PLAIN);
            assertSame(kept, SharedEvaluators.of(stays, Engine.PLAIN));
        }
        assertNotSame(gone, SharedEvaluators.of(goes, Engine.PLAIN));
    }

    @Test
    void an_unusable_edition_is_told_each_time_it_is_asked_for() {
        Map<String, String> files = SmallEdition.withFewRules();
        files.put("rules/broken.drl", "rule");
        byte[] broken = SmallEdition.files(files).toZip();
        for (int i = 0; i < 2; i++) {
            UnusableEdition thrown =
                    assertThrows(UnusableEdition.class, () -> SharedEvaluators.of(broken, Engine.QUICK));
            assertTrue(thrown.getMessage().contains("rules/broken.drl"), thrown.getMessage());
        }
    }

    @Test
    void a_function_that_was_sent_as_bytes_answers_in_order_and_by_all_its_wishes() throws Exception {
        Wishes wishes = new Wishes(Map.of("cost", 3.0), Map.of("hours-per-shift", "16 h"), "2026-11-25", 7);
        PartitionEvaluator sent = travelled(new PartitionEvaluator(bundle("sent"), Engine.QUICK, wishes));
        List<String> tasks = IntStream.range(0, 40)
                .mapToObj(i -> i % 5 == 3 ? "{}" : "title: t" + i + "\npart: {mass: " + (i + 1) * 40 + " g}")
                .toList();
        Iterator<Evaluation> answers = sent.apply(tasks.iterator());
        TaskEvaluator here = TaskEvaluator.of(SmallEdition.read(edition("sent")), Engine.PLAIN);
        for (String task : tasks) {
            assertEquals(said(here.evaluate(task, wishes)), said(answers.next()), task);
        }
        assertTrue(!answers.hasNext());
        assertNotEquals(said(here.evaluate(tasks.get(0), Starter.WISHES)), said(here.evaluate(tasks.get(0), wishes)));
    }

    @Test
    void functions_sent_to_one_jvm_share_its_evaluator_and_do_not_see_the_sender_change_the_bytes() throws Exception {
        byte[] bundle = bundle("sent twice");
        TaskEvaluator shared = SharedEvaluators.of(bundle, Engine.QUICK);
        PartitionEvaluator function = new PartitionEvaluator(bundle, Engine.QUICK, Starter.WISHES);
        byte[] before = bundle.clone();
        Arrays.fill(bundle, (byte) 0);
        Iterator<Evaluation> answers =
                travelled(function).apply(List.of("title: a").iterator());
        assertEquals(said(shared.evaluate("title: a", Starter.WISHES)), said(answers.next()));
        assertSame(shared, SharedEvaluators.of(before, Engine.QUICK));
    }

    private static String said(Evaluation evaluation) {
        return evaluation instanceof Evaluation.Answered a
                ? a.title() + " " + a.hash()
                : "refused " + ((Evaluation.Refused) evaluation).diagnostics();
    }

    private static PartitionEvaluator travelled(PartitionEvaluator function) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(function);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (PartitionEvaluator) in.readObject();
        }
    }

    /** Few rules: how an edition is shared hangs on none of them. */
    private static EditionFiles edition(String text) {
        Map<String, String> files = SmallEdition.withFewRules();
        files.merge("edition.yaml", "\n# " + text + "\n", String::concat);
        return SmallEdition.files(files);
    }

    private static byte[] bundle(String text) {
        return edition(text).toZip();
    }

    /** The same files, packed without compression. */
    private static byte[] stored(String text) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setLevel(Deflater.NO_COMPRESSION);
            for (Map.Entry<String, byte[]> file : edition(text).files().entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}

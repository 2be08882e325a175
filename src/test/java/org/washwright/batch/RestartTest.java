package org.washwright.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.assessment.Wishes;
import org.washwright.document.Message;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.library.Engine;
import org.washwright.rule.Edition;

/** A run that ended anywhere is taken up where it ended, and nothing is mixed that does not belong together. */
class RestartTest {

    private static final int RECORDS = 12;

    /** A small one: what is looked at here is the file and not the answer. */
    private static final Edition EDITION = SmallEdition.with("");

    @TempDir
    private Path folder;

    private Path input;
    private Path output;

    @BeforeEach
    void input() throws Exception {
        input = folder.resolve("tasks.ndjson");
        output = folder.resolve("answers.ndjson");
        write(RECORDS);
    }

    private void write(int records) throws Exception {
        StringBuilder lines = new StringBuilder();
        for (int i = 1; i <= records; i++) {
            // Each fourth is refused: those count as done like the others.
            lines.append(i % 4 == 0 ? "{}" : "{\"title\":\"task " + i + "\",\"part\":{\"mass\":\"" + i + " g\"}}")
                    .append('\n');
        }
        Files.writeString(input, lines);
    }

    @Test
    void wherever_a_run_was_cut_the_next_one_gives_the_bytes_of_an_undisturbed_run_and_repeats_nothing()
            throws Exception {
        run(Starter.WISHES, false);
        byte[] whole = Files.readAllBytes(output);
        for (int cut = 0; cut <= whole.length; cut += 1 + whole.length / 40) {
            Files.write(output, Arrays.copyOf(whole, cut));
            Tally tally = run(Starter.WISHES, false);
            assertArrayEquals(whole, Files.readAllBytes(output), "cut at " + cut);
            long wholeLines = new String(whole, 0, cut, StandardCharsets.UTF_8)
                    .chars()
                    .filter(c -> c == '\n')
                    .count();
            assertEquals(wholeLines, tally.kept(), "cut at " + cut);
            assertEquals(RECORDS, tally.done());
            assertEquals(RECORDS / 4, tally.count(Status.REFUSED));
        }
    }

    @Test
    void a_hole_that_lost_power_tore_counts_as_the_end_of_what_is_done() throws Exception {
        run(Starter.WISHES, false);
        byte[] whole = Files.readAllBytes(output);
        byte[] holed = whole.clone();
        Arrays.fill(holed, whole.length / 2, whole.length / 2 + 100, (byte) 0);
        Files.write(output, holed);
        Tally tally = run(Starter.WISHES, false);
        assertArrayEquals(whole, Files.readAllBytes(output));
        assertTrue(tally.kept() < RECORDS, "kept " + tally.kept());
    }

    @Test
    void an_input_that_has_grown_is_answered_from_where_it_ended() throws Exception {
        run(Starter.WISHES, false);
        write(RECORDS + 3);
        Tally tally = run(Starter.WISHES, false);
        assertEquals(RECORDS, tally.kept());
        assertEquals(RECORDS + 3, tally.done());
    }

    @Test
    void another_request_a_changed_and_a_shortened_input_are_refused_and_change_nothing() throws Exception {
        run(Starter.WISHES, false);
        byte[] whole = Files.readAllBytes(output);
        refused(Message.OUTPUT_OTHER_REQUEST, Wishes.on("2020-01-01"), "asOf");
        String text = Files.readString(input);
        Files.writeString(input, text.replace("task 5\"", "task five\""));
        refused(Message.INPUT_CHANGED, Starter.WISHES, "record 5 ");
        Files.writeString(input, text.substring(0, text.length() / 2 + 1));
        refused(Message.INPUT_CHANGED, Starter.WISHES, "");
        write(5);
        refused(Message.INPUT_SHORTER, Starter.WISHES, "record 5");
        assertArrayEquals(whole, Files.readAllBytes(output));
        write(RECORDS);
        assertEquals(RECORDS, run(Starter.WISHES, false).kept());
    }

    @Test
    void starting_anew_leaves_nothing_of_the_run_before() throws Exception {
        run(Starter.WISHES, false);
        write(5);
        Tally tally = run(Wishes.on("2020-01-01"), true);
        assertEquals(0, tally.kept());
        assertEquals(5, Files.readAllLines(output).size());
        assertEquals(5, run(Wishes.on("2020-01-01"), false).kept());
        assertEquals("2020-01-01", Batch.asOfOf(output.toString()).orElseThrow());
    }

    @Test
    void a_file_that_no_run_wrote_is_left_alone() throws Exception {
        Files.writeString(output, "my thesis\n");
        refused(Message.OUTPUT_STRANGE, Starter.WISHES, "answers.ndjson.run");
        assertEquals("my thesis\n", Files.readString(output));
    }

    @Test
    void a_file_that_another_run_is_writing_is_left_alone() throws Exception {
        try (Batch first = open(Starter.WISHES, false)) {
            refused(Message.OUTPUT_BUSY, Starter.WISHES, "");
            first.run();
        }
        assertEquals(RECORDS, run(Starter.WISHES, false).kept());
    }

    @Test
    void an_output_that_would_be_read_as_input_is_refused_by_whatever_name() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("link.ndjson"), input);
        output = link;
        refused(Message.OUTPUT_IS_INPUT, Starter.WISHES, "");
        output = folder.resolve("../" + folder.getFileName() + "/tasks.ndjson");
        refused(Message.OUTPUT_IS_INPUT, Starter.WISHES, "");
        input = folder;
        output = folder.resolve("sub/answers.json");
        refused(Message.OUTPUT_IS_INPUT, Starter.WISHES, "");
    }

    @Test
    void an_output_in_a_folder_that_is_not_there_is_refused_with_that_reason() {
        output = folder.resolve("nowhere/answers.ndjson");
        refused(Message.OUTPUT_UNWRITABLE, Starter.WISHES, "no such folder");
    }

    private void refused(Message message, Wishes wishes, String words) {
        BatchRefusal refusal = assertThrows(BatchRefusal.class, () -> run(wishes, false));
        assertEquals(message, refusal.diagnostics().get(0).message());
        assertTrue(refusal.diagnostics().get(0).toString().contains(words), refusal.getMessage());
    }

    private Tally run(Wishes wishes, boolean again) throws Exception {
        try (Batch batch = open(wishes, again)) {
            Batch.End end = batch.run();
            assertTrue(end.writeFailure().isEmpty() && end.readFailure().isEmpty());
            return batch.tally();
        }
    }

    private Batch open(Wishes wishes, boolean again) throws BatchRefusal {
        Batch.Request request = new Batch.Request(
                EDITION, wishes, input.toString(), output.toString(), false, again, 2, 0, Engine.PLAIN);
        Batch.Streams none = new Batch.Streams(InputStream.nullInputStream(), new ByteArrayOutputStream());
        return Batch.open(request, none, (key, record, line, trouble) -> {});
    }
}

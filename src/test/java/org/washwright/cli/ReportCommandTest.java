package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.document.Hashes;

class ReportCommandTest {

    private static final String TASK = "demo-data/tasks/bearing-rings.yaml";

    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {}

    @Test
    void one_answer_is_written_as_each_kind_of_file_under_the_hash_that_assess_gives() throws IOException {
        Path pdf = folder.resolve("rings.pdf");
        Path page = folder.resolve("rings.HTML");
        Path book = folder.resolve("rings.xlsx");
        for (Path file : List.of(pdf, page, book)) {
            Ran ran = report(TASK, file);
            assertEquals(ExitCode.OK, ran.code(), ran.err());
            assertEquals("", ran.err());
        }
        Ran assessed = run(List.of("assess", "--interpret", "--json", "--as-of", "2026-11-25", TASK));
        String hash = Hashes.sha256(assessed.out().getBytes(StandardCharsets.UTF_8));
        assertTrue(Files.readString(page).contains(hash));
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            assertEquals("Answer " + hash, document.getDocumentInformation().getSubject());
        }
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(Files.readAllBytes(book)))) {
            assertTrue(workbook.findSheet("figures").isPresent());
        }
    }

    @Test
    void a_file_is_written_over_only_when_that_is_asked_for() throws IOException {
        Path file = folder.resolve("rings.html");
        Files.writeString(file, "mine");
        Ran refused = report(TASK, file);
        assertEquals(ExitCode.CANNOT_WRITE, refused.code());
        assertTrue(refused.err().contains("exists already"), refused.err());
        assertEquals("mine", Files.readString(file));
        assertEquals(ExitCode.OK, report(TASK, file, "--force").code());
        byte[] once = Files.readAllBytes(file);
        assertFalse(new String(once, StandardCharsets.UTF_8).contains("mine\n"));
        assertEquals(ExitCode.OK, report(TASK, file, "--force").code());
        assertArrayEquals(once, Files.readAllBytes(file));
    }

    @Test
    void another_line_is_written_out_when_its_process_is_named() throws IOException {
        Path file = folder.resolve("rings.html");
        Ran ran = report(TASK, file, "--process", "neutral-ultrasonic");
        assertEquals(ExitCode.OK, ran.code(), ran.err());
        assertTrue(Files.readString(file).contains("Neutral immersion with ultrasonics</b>"));
    }

    @Test
    void a_process_that_does_not_stand_is_refused_with_the_reason_and_those_that_do() {
        Path file = folder.resolve("rings.pdf");
        Ran out = report(TASK, file, "--process", "acid-pickling");
        assertEquals(ExitCode.USAGE, out.code());
        assertTrue(out.err().contains("it is ruled out"), out.err());
        assertTrue(out.err().contains("Acid pickling charges hydrogen into bearing steel of 62 HRC"), out.err());
        assertTrue(out.err().contains("neutral-ultrasonic"), out.err());
        Ran none = report(TASK, file, "--process", "moon-dust");
        assertEquals(ExitCode.USAGE, none.code());
        assertTrue(none.err().contains("the edition has no such process"), none.err());
        assertFalse(Files.exists(file));
    }

    @Test
    void what_is_wrong_with_the_command_or_its_input_has_its_own_exit_code() throws IOException {
        Ran kind = report(TASK, folder.resolve("rings.doc"));
        assertEquals(ExitCode.USAGE, kind.code());
        assertTrue(kind.err().contains(".pdf, .xlsx or .html"), kind.err());
        assertEquals(ExitCode.USAGE, run(List.of("report", TASK)).code());
        assertEquals(
                ExitCode.UNREADABLE_INPUT,
                report("no-such-task.yaml", folder.resolve("a.pdf")).code());
        Path broken = Files.writeString(folder.resolve("broken.yaml"), "title: A\npart: {mass: 3 miles}\n");
        Ran refused = report(broken.toString(), folder.resolve("b.pdf"));
        assertEquals(ExitCode.UNREADABLE_INPUT, refused.code());
        assertTrue(refused.err().contains("3 miles"), refused.err());
        Ran nowhere = report(TASK, folder.resolve("no-folder").resolve("c.html"));
        assertEquals(ExitCode.CANNOT_WRITE, nowhere.code());
        assertTrue(nowhere.err().contains("can't be written"), nowhere.err());
    }

    private static Ran report(String task, Path file, String... more) {
        List<String> arguments = new ArrayList<>(
                List.of("report", "--interpret", "--as-of", "2026-11-25", "--out", file.toString(), task));
        arguments.addAll(List.of(more));
        return run(arguments);
    }

    private static Ran run(List<String> arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments.toArray(String[]::new));
        return new Ran(code, out.toString(), err.toString());
    }
}

package org.washwright.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.assessment.Assessor;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Severity;
import org.washwright.drools.DrlReader;
import org.washwright.drools.DroolsInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/** Reads hostile texts and says whether they were refused as they have to be. */
final class Verdict {

    /** Far longer than any reading takes: what is still at it then hangs. */
    private static final Duration HANGS = Duration.ofSeconds(20);

    /** What is missing has no value. */
    private static final Set<Message> MISSING = Set.of(Message.MISSING_FIELD, Message.MISSING_ANNOTATION);

    private static final Edition SMALL = SmallEdition.with("");

    private Verdict() {}

    /** Asserts that a text is refused at its line with value and advice, and that nothing of it ran. */
    static void refused(HostileText text) {
        List<Diagnostic> found = refused(text.file(), text.text().getBytes(StandardCharsets.UTF_8));
        List<Diagnostic> there = found.stream()
                .filter(d -> d.severity() == Severity.ERROR)
                .filter(d -> d.place().line() == text.line())
                .filter(d -> !d.value().isBlank() || MISSING.contains(d.message()))
                .toList();
        assertFalse(there.isEmpty(), () -> "nothing names line " + text.line() + " and what stands there: " + found);
    }

    /** Asserts that a file, put into a sound edition or read as a task, is refused, and that nothing of it ran. */
    static List<Diagnostic> refused(String file, byte[] bytes) {
        int songs = Canary.songs();
        Diagnostics diagnostics = new Diagnostics();
        assertTimeoutPreemptively(HANGS, () -> {
            if (file.startsWith("task.")) {
                Optional<CleaningTask> task = TaskReader.read(file, bytes, SMALL, diagnostics);
                assertTrue(task.isEmpty(), "it was taken: " + task);
            } else {
                Map<String, byte[]> files =
                        new TreeMap<>(SmallEdition.files(SmallEdition.texts()).files());
                files.put(file, bytes);
                refused(new EditionFiles(files), diagnostics);
            }
        });
        complete(diagnostics.all(), file);
        assertEquals(songs, Canary.songs(), "the canary sang");
        return diagnostics.all();
    }

    /** Asserts that an edition is refused; if it is taken after all, it is run, so that the canary can say how bad it is. */
    static void refused(EditionFiles files, Diagnostics diagnostics) {
        int songs = Canary.songs();
        Optional<Edition> edition =
                new EditionReader(new DrlReader()).read(files, diagnostics).edition();
        edition.ifPresent(e -> Assessor.of(e, DroolsInference.factory())
                .assess(
                        Starter.task(e, "title: t\nsoils: [soil-a]\nmaterials: [substrate-a]\nfeatures: [feature-a]\n"),
                        Starter.WISHES));
        assertTrue(edition.isEmpty(), () -> "it was taken, and the canary sang " + (Canary.songs() - songs) + " times");
    }

    private static void complete(List<Diagnostic> found, String file) {
        assertTrue(
                found.stream()
                        .anyMatch(d -> d.severity() == Severity.ERROR
                                && d.place().file().equals(file)),
                () -> "no error names " + file + ": " + found);
        for (Diagnostic d : found) {
            assertFalse(d.place().file().isBlank(), d.toString());
            assertFalse(d.text().isBlank() || d.advice().isBlank(), d.toString());
            assertTrue(d.toString().chars().noneMatch(Character::isISOControl), d.toString());
            assertTrue(
                    d.toString().length() < 2000, "a message of " + d.toString().length() + " characters");
        }
    }
}

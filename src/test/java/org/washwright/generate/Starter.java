package org.washwright.generate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DroolsInference;
import org.washwright.drools.Units;
import org.washwright.engine.InferenceFactory;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/** The starter rulebook and the demo tasks, read once, and compiled at most once, for all tests of a run. */
public final class Starter {

    /** Where the rulebook stands. */
    public static final Path FOLDER = Path.of("rules/starter");

    /** Where the demo tasks stand. */
    public static final Path TASKS = Path.of("demo-data/tasks");

    /** Below the data folder that application.properties gives the service of the tests. */
    private static final Path UNITS = Path.of("target", "test-data", "compiled-rules");

    /** A date for all answers of tests. */
    public static final Wishes WISHES = Wishes.on("2026-11-25");

    private Starter() {}

    private static final class Read {
        private static final EditionFiles FILES = files(FOLDER);
        private static final Edition EDITION = SmallEdition.read(FILES);
        private static final Assessor INTERPRETED = Assessor.of(EDITION, ReferenceInterpreter.factory());
        private static final Assessor SWEPT = Assessor.of(EDITION, SweepInference.factory());
    }

    private static final class Compiled {
        private static final Assessor ASSESSOR = Assessor.of(Read.EDITION, units());
    }

    /** Its files. */
    public static EditionFiles files() {
        return Read.FILES;
    }

    /** The edition. */
    public static Edition edition() {
        return Read.EDITION;
    }

    /** Answers by the plain interpreter. */
    public static Assessor interpreted() {
        return Read.INTERPRETED;
    }

    /** Answers by an index over the rules: the same as the interpreter's, and faster where thousands are asked for. */
    public static Assessor swept() {
        return Read.SWEPT;
    }

    /** Answers by compiled rules; the first call takes seconds. */
    public static Assessor compiled() {
        return Compiled.ASSESSOR;
    }

    /**
     * Compiles rules, and takes those that a test of this build compiled before from where the service of the tests keeps
     * its own: their names hold the text and the compiler, so that a change of either compiles anew.
     */
    public static InferenceFactory units() {
        return DroolsInference.factory(Units.in(UNITS));
    }

    /** Texts of the demo tasks by name. */
    public static Map<String, String> demoTexts() {
        Map<String, String> out = new TreeMap<>();
        try (Stream<Path> list = Files.list(TASKS)) {
            for (Path path : list.toList()) {
                out.put(path.getFileName().toString(), Files.readString(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out;
    }

    /** The demo tasks by name. */
    public static Map<String, CleaningTask> demoTasks() {
        Map<String, CleaningTask> out = new TreeMap<>();
        demoTexts().forEach((name, text) -> out.put(name, task(text)));
        return out;
    }

    /** A task by the words of the starter that has to be sound. */
    public static CleaningTask task(String yaml) {
        return task(edition(), yaml);
    }

    /** A task by the words of an edition that has to be sound. */
    public static CleaningTask task(Edition edition, String yaml) {
        Diagnostics diagnostics = new Diagnostics();
        return TaskReader.read(
                        "task.yaml", yaml.getBytes(java.nio.charset.StandardCharsets.UTF_8), edition, diagnostics)
                .orElseThrow(
                        () -> new AssertionError(List.copyOf(diagnostics.all()).toString()));
    }

    /** The interpreter's answer to a task in text. */
    public static FrozenAnswer answer(String yaml) {
        return interpreted().assess(task(yaml), WISHES);
    }

    /** Files of a folder that has to hold nothing strange. */
    public static EditionFiles files(Path folder) {
        Diagnostics diagnostics = new Diagnostics();
        try {
            EditionFiles files = EditionFiles.ofFolder(folder, diagnostics);
            if (!diagnostics.all().isEmpty()) {
                throw new AssertionError(diagnostics.all().toString());
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package org.washwright.library;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/**
 * Answers cleaning tasks by one edition, without server, database or files of its own. Open it once and keep it; it is safe
 * for use by any number of threads and holds nothing that must be closed.
 */
public final class TaskEvaluator {

    private static final String NAMELESS = "task";

    private final Edition edition;
    private final Assessor assessor;

    private TaskEvaluator(Edition edition, Engine engine) {
        this.edition = edition;
        this.assessor = Assessor.of(edition, engine.factory());
    }

    /**
     * Opens an edition from a folder or a zip bundle.
     *
     * @throws UnusableEdition when it has errors
     * @throws IOException when it can't be read at all
     */
    public static TaskEvaluator open(Path folderOrBundle, Engine engine) throws IOException {
        Diagnostics diagnostics = new Diagnostics();
        return of(EditionInput.files(folderOrBundle, diagnostics), diagnostics, engine);
    }

    /**
     * Opens an edition from the bytes of a zip bundle.
     *
     * @throws UnusableEdition when it has errors
     */
    public static TaskEvaluator open(byte[] bundle, Engine engine) {
        Diagnostics diagnostics = new Diagnostics();
        return of(EditionFiles.ofZip(bundle, diagnostics), diagnostics, engine);
    }

    /** Makes an edition that was read already ready to answer. */
    public static TaskEvaluator of(Edition edition, Engine engine) {
        return new TaskEvaluator(edition, engine);
    }

    static TaskEvaluator of(EditionFiles files, Diagnostics diagnostics, Engine engine) {
        EditionReader.Result result = EditionInput.read(files, diagnostics);
        return of(
                result.edition()
                        .orElseThrow(
                                () -> new UnusableEdition(result.diagnostics().all())),
                engine);
    }

    /** The edition it answers by. */
    public Edition edition() {
        return edition;
    }

    /** What answers for it: for whoever asks more of a task than its answer, such as which rules fired. */
    public Assessor assessor() {
        return assessor;
    }

    /** Answers a task in YAML or JSON text. */
    public Evaluation evaluate(String task, Wishes wishes) {
        return evaluate(task.getBytes(StandardCharsets.UTF_8), wishes);
    }

    /** Answers a task in YAML or JSON, UTF-8. */
    public Evaluation evaluate(byte[] task, Wishes wishes) {
        return evaluate(NAMELESS, task, wishes);
    }

    /**
     * Answers a task in YAML or JSON, UTF-8.
     *
     * @param name what messages call it, usually a file name
     */
    public Evaluation evaluate(String name, byte[] task, Wishes wishes) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<CleaningTask> read = TaskReader.read(name, task, edition, diagnostics);
        return read.isPresent() ? evaluate(read.get(), wishes) : new Evaluation.Refused("", diagnostics.all());
    }

    /** Answers a task that was read against the words of this edition. */
    public Evaluation evaluate(CleaningTask task, Wishes wishes) {
        try {
            FrozenAnswer frozen = assessor.assess(task, wishes);
            return new Evaluation.Answered(task.title(), frozen.answer(), frozen.bytes(), frozen.hash());
        } catch (RefusedTask e) {
            return new Evaluation.Refused(task.title(), e.diagnostics());
        }
    }

    /** Answers tasks one after the other as they are asked for: what a data job maps a partition of rows with. */
    public Iterator<Evaluation> evaluateAll(Iterator<String> tasks, Wishes wishes) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return tasks.hasNext();
            }

            @Override
            public Evaluation next() {
                return evaluate(tasks.next(), wishes);
            }
        };
    }

    /** What is wrong with wishes whatever the task; empty when nothing is. */
    public List<Diagnostic> wrongWith(Wishes wishes) {
        // A task of which nothing is known holds no error of its own.
        CleaningTask nothingKnown = new CleaningTask("nothing known", "", Map.of(), Map.of());
        return evaluate(nothingKnown, wishes) instanceof Evaluation.Refused r ? r.diagnostics() : List.of();
    }
}

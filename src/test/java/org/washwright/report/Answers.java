package org.washwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.exchange.EditionReader;
import org.washwright.library.EditionInput;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;

/** Demo tasks answered by the starter rulebook, made ready once. */
final class Answers {

    private static final TaskEvaluator STARTER = starter();

    private Answers() {}

    /** The answer of a demo task as the program gives it. */
    static Evaluation.Answered demo(String name) {
        try {
            byte[] task = Files.readAllBytes(Path.of("demo-data/tasks", name + ".yaml"));
            return (Evaluation.Answered) STARTER.evaluate(task, new Wishes(Map.of(), Map.of(), "2026-01-01", 0));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The report on it as the program gives it. */
    static Report plain(String name) {
        Evaluation.Answered answered = demo(name);
        return Report.ofFirst(answered.title(), "", answered.hash(), answered.answer());
    }

    /** The report on it with invented figures. */
    static Report designed(String name) {
        Evaluation.Answered answered = demo(name);
        return of(
                answered.title(),
                "Two shifts; the lid of the furnace is shared.",
                InventedDesign.in(answered.answer()));
    }

    /** A report on an answer made by a test. */
    static Report of(String title, String notes, Answer answer) {
        return Report.ofFirst(title, notes, FrozenAnswer.of(answer).hash(), answer);
    }

    private static TaskEvaluator starter() {
        EditionReader.Result read = EditionInput.readStarter();
        return TaskEvaluator.of(read.edition().orElseThrow(), Engine.PLAIN);
    }
}

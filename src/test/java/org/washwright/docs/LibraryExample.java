package org.washwright.docs;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.washwright.assessment.Wishes;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.PartitionEvaluator;
import org.washwright.library.TaskEvaluator;

/** Answers the tasks of a file, one JSON task a line: EDITION.zip TASKS. */
public final class LibraryExample {

    // The law is read as of a date; naming it makes the answers repeatable.
    private static final Wishes WISHES = Wishes.on("2026-11-25");

    private LibraryExample() {}

    public static void main(String[] args) throws IOException {
        report(Path.of(args[0]), Path.of(args[1]), System.out);
    }

    /** On all cores of one machine: one evaluator for all threads, lines out in the order of the tasks. */
    static void report(Path edition, Path tasks, PrintStream out) throws IOException {
        TaskEvaluator evaluator = TaskEvaluator.open(edition, Engine.QUICK);
        try (Stream<String> lines = Files.lines(tasks)) {
            lines.parallel()
                    .map(task -> evaluator.evaluate(task, WISHES))
                    .map(LibraryExample::row)
                    .forEachOrdered(out::println);
        }
    }

    /** In a distributed job: a serializable function from the tasks of a partition to their answers. */
    static Function<Iterator<String>, Iterator<Evaluation>> partitions(Path bundle) throws IOException {
        return new PartitionEvaluator(Files.readAllBytes(bundle), Engine.QUICK, WISHES);
    }

    /** What a job may keep of an evaluation: here the hash of the answer and its first sentence. */
    static String row(Evaluation evaluation) {
        if (evaluation instanceof Evaluation.Answered answered) {
            return answered.title() + "\t" + answered.hash() + "\t"
                    + answered.answer().headline().sentence();
        }
        List<?> reasons = ((Evaluation.Refused) evaluation).diagnostics();
        return "refused\t\t" + reasons;
    }
}

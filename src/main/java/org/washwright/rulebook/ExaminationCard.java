package org.washwright.rulebook;

import java.util.List;
import java.util.Optional;
import org.washwright.analysis.Examination;
import org.washwright.analysis.Example;
import org.washwright.analysis.Finding;
import org.washwright.analysis.TestWords;
import org.washwright.rule.Edition;
import org.washwright.task.TaskWriter;

/** An examination as shown. */
record ExaminationCard(long open, long accepted, int tries, List<Found> findings, List<Shown> rules) {

    /** A finding; {@code task} is YAML, empty for a proof. */
    record Found(
            String kind,
            List<String> rules,
            String place,
            String words,
            String task,
            String asOf,
            Optional<String> accepted) {}

    /** A rule with its examples. */
    record Shown(String id, String title, List<Task> tasks) {}

    /** An example as YAML. */
    record Task(boolean fires, String words, String task) {}

    static ExaminationCard of(Examination found, Edition edition) {
        return new ExaminationCard(
                found.open().size(),
                (long) found.findings().size() - found.open().size(),
                found.budget(),
                found.findings().stream().map(f -> finding(f, edition)).toList(),
                edition.rules().stream()
                        .map(r -> new Shown(
                                r.id(),
                                r.title(),
                                found.examples().getOrDefault(r.id(), List.of()).stream()
                                        .map(e -> task(e, edition))
                                        .toList()))
                        .toList());
    }

    private static Found finding(Finding f, Edition edition) {
        return new Found(
                f.kind().word(),
                f.rules(),
                f.place().file() + ", line " + f.place().line(),
                f.words(),
                f.witness().map(w -> TaskWriter.yaml(w, edition, "")).orElse(""),
                f.asOf(),
                f.accepted());
    }

    private static Task task(Example e, Edition edition) {
        String about = e.test().map(t -> ": " + TestWords.of(t, edition)).orElse("");
        return new Task(e.fires(), e.words() + about, TaskWriter.yaml(e.task(), edition, ""));
    }
}

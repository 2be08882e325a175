package org.washwright.training;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.Hashes;
import org.washwright.explain.exercise.Exercise;
import org.washwright.explain.exercise.Prediction;
import org.washwright.problem.ProblemError;

/**
 * The form in which an exercise is worked on, with what was filled in.
 *
 * @param firsts processes that may come first
 * @param processes one part for each process
 */
record WorkForm(List<Option> firsts, List<Part> processes) {
    private static final String FIRST = "first";
    private static final String STATUS = "status.";
    private static final String REASONS = "reasons.";
    private static final String WORDS = "words.";
    private static final int WORDS_MOST = 20_000;

    /** Something to choose. */
    record Option(String value, String name, boolean chosen) {}

    /** What is asked about one process; {@code error} stands beside it. */
    record Part(String process, String name, List<Option> statuses, List<Option> reasons, String words, String error) {

        /** Id of its part of the page. */
        public String anchor() {
            return "process-" + process;
        }
    }

    static WorkForm blank(Exercise exercise) {
        return of(exercise, new MultivaluedHashMap<>(), List.of());
    }

    static WorkForm of(Exercise exercise, MultivaluedMap<String, String> filled, List<ProblemError> errors) {
        String first = text(filled, FIRST);
        List<Option> firsts = new ArrayList<>();
        exercise.processes()
                .forEach(p ->
                        firsts.add(new Option(p.process(), p.name(), p.process().equals(first))));
        firsts.add(new Option(Prediction.NONE, "none of them stands", Prediction.NONE.equals(first)));
        return new WorkForm(
                firsts,
                exercise.processes().stream().map(p -> part(p, filled, errors)).toList());
    }

    private static Part part(Exercise.Asked asked, MultivaluedMap<String, String> filled, List<ProblemError> errors) {
        String status = text(filled, STATUS + asked.process());
        List<String> picked = filled.getOrDefault(REASONS + asked.process(), List.of());
        return new Part(
                asked.process(),
                asked.name(),
                Prediction.STATUSES.stream()
                        .map(s -> new Option(s, s, s.equals(status)))
                        .toList(),
                asked.choices().stream()
                        .map(c -> new Option(c.rule(), c.title(), picked.contains(c.rule())))
                        .toList(),
                text(filled, WORDS + asked.process()),
                errors.stream()
                        .filter(e -> e.pointer().equals(Optional.of("process-" + asked.process())))
                        .map(ProblemError::message)
                        .findFirst()
                        .orElse(""));
    }

    /** Processes without a status, each as an error beside its part of the form. */
    static List<ProblemError> open(Exercise exercise, MultivaluedMap<String, String> filled) {
        return exercise.processes().stream()
                .filter(p -> text(filled, STATUS + p.process()).isEmpty())
                .map(p -> ProblemError.at(
                        "process-" + p.process(),
                        "",
                        "What becomes of " + p.name() + " is not said.",
                        "Choose one of the three.",
                        "missing-field"))
                .toList();
    }

    /** What was filled in as a document; what is wrong with it has the place of its process in {@link #placed}. */
    static byte[] document(Exercise exercise, MultivaluedMap<String, String> filled) {
        List<Map<String, Object>> predictions = new ArrayList<>();
        for (Exercise.Asked asked : exercise.processes()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("process", asked.process());
            one.put("status", text(filled, STATUS + asked.process()));
            one.put("reasons", filled.getOrDefault(REASONS + asked.process(), List.of()));
            one.put("words", text(filled, WORDS + asked.process()));
            predictions.add(one);
        }
        return Hashes.canonical(Map.of(FIRST, text(filled, FIRST), "predictions", predictions));
    }

    /** Errors of the document as errors of the form. */
    static List<ProblemError> placed(Exercise exercise, List<ProblemError> errors) {
        return errors.stream().map(e -> placed(exercise, e)).toList();
    }

    private static ProblemError placed(Exercise exercise, ProblemError error) {
        String pointer = error.pointer().orElse("");
        String[] steps = pointer.split("/");
        String field = FIRST;
        if (steps.length > 2 && steps[1].equals("predictions") && steps[2].matches("[0-9]{1,3}")) {
            int i = Integer.parseInt(steps[2]);
            field = i < exercise.processes().size()
                    ? "process-" + exercise.processes().get(i).process()
                    : FIRST;
        }
        return ProblemError.at(field, error.value().orElse(""), error.message(), error.advice(), error.code());
    }

    private static String text(MultivaluedMap<String, String> filled, String name) {
        String text = Optional.ofNullable(filled.getFirst(name)).orElse("").strip();
        return text.length() > WORDS_MOST ? text.substring(0, WORDS_MOST) : text;
    }
}

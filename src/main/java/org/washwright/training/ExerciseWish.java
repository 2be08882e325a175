package org.washwright.training;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Node;
import org.washwright.explain.exercise.Exercise;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;

/**
 * What a trainer asks for, as it was typed.
 *
 * @param title what people call it
 * @param instruction what to do; may be empty
 * @param processes ids of processes to judge; none takes a mix
 * @param due day by which it is to be done, ISO 8601; empty for none
 * @param seed what the wrong reasons are drawn by
 */
record ExerciseWish(String title, String instruction, List<String> processes, String due, long seed) {

    static final int TITLE_MOST = 200;
    static final int INSTRUCTION_MOST = 4000;
    private static final long SEED_MOST = 9_007_199_254_740_991L;

    ExerciseWish {
        processes = List.copyOf(processes);
    }

    /** A wish in a body, with the answer it is about. */
    record OfRequest(UUID assessment, ExerciseWish wish) {}

    /**
     * Reads a body of JSON or YAML.
     *
     * @throws Invalid with every error at once
     */
    static OfRequest read(byte[] body) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<Node> node = DocumentReader.read(
                ProblemErrors.BODY, body == null ? "" : new String(body, StandardCharsets.UTF_8), diagnostics);
        if (node.isEmpty()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        MapReader map = MapReader.of(node.get(), "the exercise", diagnostics);
        List<ProblemError> more = new ArrayList<>();
        String assessment = map.required("assessment");
        Optional<UUID> id = uuid(assessment);
        if (id.isEmpty() && !assessment.isEmpty()) {
            more.add(ProblemError.at(
                    "/assessment",
                    assessment,
                    "This is no id of an assessment.",
                    "Take it from its address.",
                    "bad-id"));
        }
        String seed = map.text("seed");
        long number = seed.matches("[0-9]{1,16}") ? Long.parseLong(seed) : 0;
        if (!seed.isEmpty() && (!seed.matches("[0-9]{1,16}") || number > SEED_MOST)) {
            more.add(ProblemError.at(
                    "/seed",
                    seed,
                    "The seed is no whole number from 0 to " + SEED_MOST + ".",
                    "Leave it out, or write one.",
                    "out-of-range"));
        }
        ExerciseWish wish = new ExerciseWish(
                map.text("title").strip(),
                map.text("instruction").strip(),
                map.texts("processes"),
                map.text("due").strip(),
                number);
        map.noMore();
        List<ProblemError> errors = new ArrayList<>(ProblemErrors.of(diagnostics.all()));
        errors.addAll(more);
        errors.addAll(wish.errors());
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return new OfRequest(id.orElseThrow(), wish);
    }

    /** What is wrong with it by itself. */
    List<ProblemError> errors() {
        List<ProblemError> errors = new ArrayList<>();
        if (title.isEmpty() || title.length() > TITLE_MOST) {
            errors.add(ProblemError.at(
                    "/title",
                    shown(title),
                    title.isEmpty() ? "The exercise has no title." : "The title is too long.",
                    "Write up to " + TITLE_MOST + " characters.",
                    "bad-title"));
        }
        if (instruction.length() > INSTRUCTION_MOST) {
            errors.add(ProblemError.at(
                    "/instruction",
                    shown(instruction),
                    "The instruction is too long.",
                    "Write up to " + INSTRUCTION_MOST + " characters.",
                    "too-long"));
        }
        if (processes.size() > Exercise.MOST_PROCESSES) {
            errors.add(ProblemError.at(
                    "/processes",
                    String.valueOf(processes.size()),
                    processes.size() + " processes are too many.",
                    "Choose at most " + Exercise.MOST_PROCESSES + ".",
                    "too-many"));
        }
        if (!due.isEmpty() && day().isEmpty()) {
            errors.add(ProblemError.at(
                    "/due", shown(due), "This is no day.", "Write for instance 2026-12-24.", "bad-date"));
        }
        return errors;
    }

    /** The day by which it is to be done, if there is one. */
    Optional<LocalDate> day() {
        try {
            return due.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(due));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static String shown(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    private static Optional<UUID> uuid(String text) {
        return text.matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")
                ? Optional.of(UUID.fromString(text))
                : Optional.empty();
    }
}

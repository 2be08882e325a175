package org.washwright.explain.exercise;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.explain.exercise.Prediction.Guess;

/**
 * Reads a prediction from YAML or JSON: {@code first}, and {@code predictions} with {@code process}, {@code status}, and
 * perhaps {@code reasons} and {@code words}. Every process asked needs a status. All that is wrong is said at once.
 */
public final class PredictionReader {

    /** Most bytes of a prediction. */
    public static final int MAX_BYTES = 100_000;

    /** Longest text in one's own words. */
    public static final int WORDS_MOST = 2000;

    private final Exercise exercise;
    private final Diagnostics diagnostics;

    private PredictionReader(Exercise exercise, Diagnostics diagnostics) {
        this.exercise = exercise;
        this.diagnostics = diagnostics;
    }

    /**
     * The prediction; empty after an error.
     *
     * @param file what messages call it
     */
    public static Optional<Prediction> read(String file, byte[] bytes, Exercise exercise, Diagnostics diagnostics) {
        if (bytes.length > MAX_BYTES) {
            diagnostics.add(
                    Message.TOO_LARGE, Place.ofFile(file), "a text of more than " + MAX_BYTES + " bytes", MAX_BYTES);
            return Optional.empty();
        }
        Optional<Prediction> read = DocumentReader.read(file, bytes, diagnostics)
                .map(n -> new PredictionReader(exercise, diagnostics).prediction(n));
        return diagnostics.hasErrors() ? Optional.empty() : read;
    }

    private Prediction prediction(Node node) {
        MapReader map = MapReader.of(node, "the prediction", diagnostics);
        List<String> firsts = new ArrayList<>(processes());
        firsts.add(Prediction.NONE);
        String first = known(map, "first", "process asked, nor \"none\"", firsts);
        List<Guess> guesses = new ArrayList<>();
        Set<String> judged = new HashSet<>();
        for (Node item : list(map, "predictions")) {
            Guess guess = guess(MapReader.of(item, "a prediction", diagnostics));
            if (!guess.process().isEmpty() && !judged.add(guess.process())) {
                diagnostics.add(Message.DUPLICATE_KEY, item.place(), guess.process());
            }
            guesses.add(guess);
        }
        exercise.processes().stream()
                .map(Exercise.Asked::process)
                .filter(p -> !judged.contains(p))
                .forEach(p -> diagnostics.add(Message.MISSING_FIELD, map.place(), "", "the prediction", p));
        map.noMore();
        return new Prediction(first, guesses);
    }

    private Guess guess(MapReader map) {
        String process = known(map, "process", "process asked", processes());
        if (process.isEmpty() && map.text("process").isBlank()) {
            map.required("process");
        }
        String status = known(map, "status", "status", Prediction.STATUSES);
        if (status.isEmpty() && map.text("status").isBlank()) {
            map.required("status");
        }
        List<String> choices = exercise.asked(process)
                .map(a -> a.choices().stream().map(Exercise.Choice::rule).toList())
                .orElse(List.of());
        List<String> reasons = new ArrayList<>();
        for (Node item : list(map, "reasons")) {
            if (!process.isEmpty() && !choices.contains(item.shown())) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        item.place(),
                        item.shown(),
                        "reason offered for this process",
                        Similar.advice(item.shown(), choices));
            }
            reasons.add(item.shown());
        }
        String words = map.text("words").strip();
        if (words.length() > WORDS_MOST) {
            diagnostics.add(Message.TEXT_TOO_LONG, place(map, "words"), words.substring(0, 40), WORDS_MOST);
        }
        map.noMore();
        return new Guess(process, status, reasons.stream().distinct().toList(), words);
    }

    /** One of the words known; empty when missing or after an error. */
    private String known(MapReader map, String key, String what, List<String> words) {
        String text = map.text(key).strip();
        if (text.isEmpty() || words.contains(text)) {
            return text;
        }
        diagnostics.add(Message.UNKNOWN_REFERENCE, place(map, key), text, what, Similar.advice(text, words));
        return "";
    }

    /** A list; a key with nothing behind it, as in an empty template, is an empty one. */
    private static List<Node> list(MapReader map, String key) {
        boolean blank = map.get(key)
                .map(n -> n instanceof Node.ScalarNode s && s.text().isBlank() && !s.quoted())
                .orElse(false);
        return blank ? List.of() : map.list(key);
    }

    private static Place place(MapReader map, String key) {
        return map.get(key).map(Node::place).orElse(map.place());
    }

    private List<String> processes() {
        return exercise.processes().stream().map(Exercise.Asked::process).toList();
    }
}

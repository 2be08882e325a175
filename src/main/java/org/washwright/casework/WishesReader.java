package org.washwright.casework;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Node;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;

/** Reads what may be set for one assessment: weights, assumptions, date and seed. */
final class WishesReader {
    private static final long LARGEST = 9_007_199_254_740_991L;

    private WishesReader() {}

    /** From a whole body, which may be empty. */
    static Wishes read(byte[] body, String today) {
        if (body == null || body.length == 0) {
            return Wishes.on(today);
        }
        Diagnostics diagnostics = new Diagnostics();
        Optional<Node> node = DocumentReader.read(ProblemErrors.BODY, body, diagnostics);
        if (node.isEmpty()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        MapReader map = MapReader.of(node.get(), "the wishes", diagnostics);
        return read(map, today, diagnostics);
    }

    /** From a map whose other keys the caller has read; refuses what is left. */
    static Wishes read(MapReader map, String today, Diagnostics diagnostics) {
        List<ProblemError> more = new ArrayList<>();
        Map<String, Double> weights = new TreeMap<>();
        map.entries("weights")
                .forEach(e -> MapReader.number(e.value(), diagnostics).ifPresent(w -> {
                    if (w < 0) {
                        more.add(ProblemError.at(
                                e.keyPlace().pointer(),
                                e.value().shown(),
                                "A weight is not negative.",
                                "Write 0 or more.",
                                "out-of-range"));
                    }
                    weights.put(e.key(), w);
                }));
        Map<String, Double> comparisons = new TreeMap<>();
        map.entries("comparisons")
                .forEach(e -> MapReader.number(e.value(), diagnostics).ifPresent(r -> comparisons.put(e.key(), r)));
        Map<String, String> assumptions = new TreeMap<>();
        map.entries("assumptions")
                .forEach(e -> assumptions.put(e.key(), e.value().shown()));
        String asOf = map.text("asOf");
        if (!asOf.isEmpty() && !isDate(asOf)) {
            more.add(ProblemError.at("/asOf", asOf, "This is no date.", "Write for instance 2026-01-31.", "bad-date"));
        }
        String seed = map.text("seed");
        long number = 0;
        if (!seed.isEmpty()) {
            number = seed.matches("[0-9]{1,16}") ? Long.parseLong(seed) : -1;
            if (number < 0 || number > LARGEST) {
                more.add(ProblemError.at(
                        "/seed",
                        seed,
                        "The seed is no whole number from 0 to " + LARGEST + ".",
                        "Leave it out, or write one.",
                        "out-of-range"));
            }
        }
        map.noMore();
        List<ProblemError> errors = new ArrayList<>(ProblemErrors.of(diagnostics.all()));
        errors.addAll(more);
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return new Wishes(weights, comparisons, assumptions, asOf.isEmpty() ? today : asOf, number);
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException e) {
            return false;
        }
    }
}

package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.assessment.Wishes;
import org.washwright.engine.Words;
import org.washwright.problem.ProblemError;
import org.washwright.rule.Edition;
import org.washwright.rule.Grading;
import org.washwright.task.FieldType;

/**
 * The form in which weights, prices and other assumptions are set for one assessment. Names of its fields are JSON pointers into the
 * wishes, so that an error leads to its field.
 *
 * @param how {@code edition}, {@code direct} or {@code pairs}
 * @param areas the five areas with their weights
 * @param pairs every two of them, to be compared
 * @param assumptions everything the edition takes for granted
 * @param asOf date for which law and prices are read
 */
record AskForm(String how, List<AreaField> areas, List<PairField> pairs, List<Assumed> assumptions, String asOf) {

    private static final String EDITION = "edition";
    private static final String DIRECT = "direct";
    private static final String PAIRS = "pairs";
    private static final int FIGURES = 3;

    /** The weight of one area, as the edition has it and as it was typed. */
    record AreaField(String field, String name, String usual, String typed) {}

    /** How many times as much the first area matters; the value chosen is one of the steps. */
    record PairField(String field, String first, String second, List<Step> steps) {}

    /** One answer to a comparison. */
    record Step(String value, String words, boolean chosen) {}

    /** An assumption, as the edition has it and as it was typed; nothing typed leaves it. */
    record Assumed(String field, String label, String usual, String source, String typed) {}

    /** Steps from one area to the other: Saaty's 1, 3, 5, 7, 9 and between equal and moderate 2. */
    private static final List<Double> SCALE =
            List.of(9.0, 7.0, 5.0, 3.0, 2.0, 1.0, 1 / 2.0, 1 / 3.0, 1 / 5.0, 1 / 7.0, 1 / 9.0);

    /** The form as it was filled in; empty fields show what the edition says. */
    static AskForm of(Edition edition, Map<String, String> typed, String today) {
        List<AreaField> areas = edition.grading().areas().stream()
                .map(a -> new AreaField(
                        "/weights/" + a.id(),
                        a.name(),
                        plain(a.weight()),
                        typed.getOrDefault("/weights/" + a.id(), "")))
                .toList();
        List<PairField> pairs = new ArrayList<>();
        List<Grading.Area> all = edition.grading().areas();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                pairs.add(pair(all.get(i), all.get(j), typed));
            }
        }
        Words words = new Words(edition.catalogue());
        List<Assumed> assumptions = edition.assumptions().values().stream()
                .map(a -> new Assumed(
                        "/assumptions/" + a.id(),
                        a.label(),
                        words.value(a.value(), FieldType.number(a.dimension()), Words.GIVEN),
                        a.source(),
                        typed.getOrDefault("/assumptions/" + a.id(), "")))
                .toList();
        return new AskForm(
                typed.getOrDefault("how", EDITION), areas, pairs, assumptions, typed.getOrDefault("/asOf", today));
    }

    private static PairField pair(Grading.Area a, Grading.Area b, Map<String, String> typed) {
        String field = "/comparisons/" + a.id() + "~1" + b.id();
        String chosen = typed.getOrDefault(field, "");
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("", "not compared: taken as equal", chosen.isEmpty()));
        for (double step : SCALE) {
            String value = String.valueOf(step);
            steps.add(new Step(value, words(step, a.name(), b.name()), value.equals(chosen)));
        }
        return new PairField(field, a.name(), b.name(), steps);
    }

    private static String words(double step, String a, String b) {
        if (step == 1) {
            return "both alike";
        }
        return step > 1 ? plain(step) + " times as much: " + a : plain(1 / step) + " times as much: " + b;
    }

    private static String plain(double number) {
        return org.washwright.quantity.Quantities.number(number, FIGURES);
    }

    /** What is wished; numbers that can't be read are added to the errors. */
    static Wishes wishes(Map<String, String> typed, String today, List<ProblemError> errors) {
        Map<String, Double> weights = new TreeMap<>();
        Map<String, Double> comparisons = new TreeMap<>();
        Map<String, String> assumptions = new TreeMap<>();
        String how = typed.getOrDefault("how", EDITION);
        typed.forEach((field, text) -> {
            String[] parts = field.split("/", 3);
            if (parts.length < 3 || text.isBlank()) {
                return;
            }
            if (parts[1].equals("weights") && how.equals(DIRECT)) {
                number(field, text, errors, weights, parts[2]);
            } else if (parts[1].equals("comparisons") && how.equals(PAIRS)) {
                number(field, text, errors, comparisons, parts[2].replace("~1", "/"));
            } else if (parts[1].equals("assumptions")) {
                assumptions.put(parts[2], text);
            }
        });
        if (how.equals(PAIRS) && comparisons.isEmpty()) {
            errors.add(ProblemError.at(
                    "how",
                    "",
                    "No two areas were compared.",
                    "Compare some, or keep the edition's weights.",
                    "missing"));
        }
        return new Wishes(weights, comparisons, assumptions, typed.getOrDefault("/asOf", today), 0);
    }

    private static void number(
            String field, String text, List<ProblemError> errors, Map<String, Double> into, String key) {
        String clean = text.strip();
        if (clean.matches("[0-9]{1,4}(\\.[0-9]{1,20})?")) {
            into.put(key, Double.valueOf(clean));
        } else {
            errors.add(ProblemError.at(
                    field, clean, "This is no weight.", "Write a number from 0 to 1000, with a point.", "bad-number"));
        }
    }
}

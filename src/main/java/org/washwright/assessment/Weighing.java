package org.washwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Grading;
import org.washwright.science.PairwiseWeights;

/**
 * The weights of the five areas: those of the edition, those set directly, or those that follow from comparing areas in pairs.
 *
 * @param weights weight of each area by id, in the order of the areas
 * @param how how they were set, in words
 * @param consistency consistency ratio of the comparisons; null when none were made
 * @param notes what stands against relying on them
 */
record Weighing(Map<String, Double> weights, String how, Double consistency, List<String> notes) {

    private static final double LARGEST = 9;
    private static final double HUNDRED = 100;
    private static final int FIGURES = 3;

    /** The weights wished for; what is wrong with them goes into the diagnostics. */
    static Weighing of(Grading grading, Wishes wishes, Diagnostics diagnostics) {
        if (!wishes.comparisons().isEmpty()) {
            return compared(grading, wishes, diagnostics);
        }
        Map<String, Double> weights = new LinkedHashMap<>();
        for (Grading.Area area : grading.areas()) {
            weights.put(area.id(), wishes.weights().getOrDefault(area.id(), area.weight()));
        }
        wishes.weights().forEach((area, weight) -> {
            Place place = new Place("-", 0, 0, "/weights/" + area);
            if (!Grading.AREAS.contains(area)) {
                diagnostics.add(Message.UNKNOWN_REFERENCE, place, area, "area", Similar.advice(area, Grading.AREAS));
            } else if (!(weight >= 0 && weight <= 1000)) {
                diagnostics.add(Message.OUT_OF_RANGE, place, String.valueOf(weight), "0 to 1000");
            }
        });
        // Said by what they are, so that the request alone tells how they were set.
        boolean own = grading.areas().stream().allMatch(a -> weights.get(a.id()) == a.weight());
        String how = own ? "weights of the edition" : "weights set directly";
        return new Weighing(weights, how, null, List.of());
    }

    private static Weighing compared(Grading grading, Wishes wishes, Diagnostics diagnostics) {
        int n = Grading.AREAS.size();
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            java.util.Arrays.fill(matrix[i], 1);
        }
        TreeMap<String, Double> open = new TreeMap<>();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                open.put(Grading.AREAS.get(i) + "/" + Grading.AREAS.get(j), 1.0);
            }
        }
        wishes.comparisons().forEach((pair, ratio) -> {
            Place place = new Place("-", 0, 0, "/comparisons/" + pair.replace("/", "~1"));
            String[] areas = pair.split("/", -1);
            int a = areas.length == 2 ? Grading.AREAS.indexOf(areas[0]) : -1;
            int b = areas.length == 2 ? Grading.AREAS.indexOf(areas[1]) : -1;
            if (a < 0 || b < 0 || a == b) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        place,
                        pair,
                        "pair of two areas such as technology/cost",
                        "the areas are " + String.join(", ", Grading.AREAS));
            } else if (!(ratio >= 1 / LARGEST - 1e-9 && ratio <= LARGEST)) {
                diagnostics.add(Message.OUT_OF_RANGE, place, String.valueOf(ratio), "1/9 to 9");
            } else if (open.remove(Grading.AREAS.get(Math.min(a, b)) + "/" + Grading.AREAS.get(Math.max(a, b)))
                    == null) {
                diagnostics.add(Message.DUPLICATE_ID, place, pair, "comparison", "the same pair the other way round");
            } else {
                matrix[a][b] = ratio;
                matrix[b][a] = 1 / ratio;
            }
        });
        if (!wishes.weights().isEmpty()) {
            diagnostics.add(
                    Message.OUT_OF_RANGE,
                    new Place("-", 0, 0, "/weights"),
                    String.join(", ", wishes.weights().keySet()),
                    "either weights or comparisons, not both");
        }
        Map<String, Double> weights = new LinkedHashMap<>();
        grading.areas().forEach(a -> weights.put(a.id(), a.weight()));
        if (diagnostics.hasErrors()) {
            return new Weighing(weights, "", null, List.of());
        }
        PairwiseWeights result = PairwiseWeights.of(matrix);
        for (int i = 0; i < n; i++) {
            weights.put(Grading.AREAS.get(i), HUNDRED * result.weights().get(i));
        }
        return new Weighing(
                weights,
                "weights from comparing areas in pairs",
                result.consistencyRatio(),
                notes(grading, result, open));
    }

    private static List<String> notes(Grading grading, PairwiseWeights result, TreeMap<String, Double> open) {
        List<String> notes = new ArrayList<>();
        if (!result.acceptable()) {
            notes.add(
                    "The comparisons contradict each other: their consistency ratio is "
                            + Quantities.number(result.consistencyRatio(), FIGURES)
                            + ", and above 0.10 weights hardly say more than chance. Compare again the pairs that surprise you most.");
        }
        if (!open.isEmpty()) {
            notes.add("Taken as equal because nobody compared them: "
                    + open.keySet().stream().map(pair -> names(grading, pair)).collect(Collectors.joining(", ")) + ".");
        }
        return notes;
    }

    private static String names(Grading grading, String pair) {
        String[] ids = pair.split("/");
        return name(grading, ids[0]) + " with " + name(grading, ids[1]);
    }

    private static String name(Grading grading, String id) {
        return grading.areas().stream()
                .filter(a -> a.id().equals(id))
                .map(Grading.Area::name)
                .findFirst()
                .orElse(id);
    }
}

package org.washwright.generate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;

/** Compares two runs of the same rules on the same facts: every match, its certainty, and every conclusion. */
public final class Agreement {

    private Agreement() {}

    /** Where they differ, in words; empty when they agree, order included. */
    public static List<String> differences(Inference.Inferred one, Inference.Inferred other) {
        List<String> out = new ArrayList<>();
        Map<String, String> left = words(one);
        Map<String, String> right = words(other);
        left.forEach((key, value) -> {
            if (!value.equals(right.get(key))) {
                out.add(key + " is " + value + " here and " + right.getOrDefault(key, "missing") + " there");
            }
        });
        right.keySet().stream()
                .filter(k -> !left.containsKey(k))
                .forEach(k -> out.add(k + " is missing here and " + right.get(k) + " there"));
        if (out.isEmpty() && !order(one).equals(order(other))) {
            out.add("the order differs: " + order(one) + " and " + order(other));
        }
        return out;
    }

    private static Map<String, String> words(Inference.Inferred inferred) {
        Map<String, String> out = new TreeMap<>();
        for (Match m : inferred.matches()) {
            String key = "match " + m.rule().id() + " " + m.key();
            String old = out.put(key, m.certain() ? "certain" : "possible");
            if (old != null) {
                out.put(key, "found twice");
            }
        }
        for (Fact f : inferred.conclusions()) {
            out.put("conclusion " + f.id(), f.sure() ? "sure" : "possible");
        }
        return out;
    }

    private static List<String> order(Inference.Inferred inferred) {
        return inferred.matches().stream()
                .map(m -> m.rule().id() + " " + m.key())
                .toList();
    }
}

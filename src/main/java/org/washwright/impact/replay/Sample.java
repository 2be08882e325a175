package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.document.Hashes;

/**
 * The changed answers that a person judges: for each part of the change in turn the weightiest one not taken yet, so that no
 * part goes unseen while there is room. The same changes always give the same sample.
 */
final class Sample {

    /** Most answers in a sample. */
    static final int MOST = 12;

    /** For answers that no single part of the change explains. */
    private static final String WHOLE = "";

    private Sample() {}

    static List<String> of(List<Impact.AnswerChange> changed) {
        List<Impact.AnswerChange> weighty =
                changed.stream().filter(c -> c.weight() != Weight.WORDING).toList();
        Map<String, List<Impact.AnswerChange>> byPart = new TreeMap<>();
        (weighty.isEmpty() ? changed : weighty).forEach(c -> {
            List<String> parts = c.by().isEmpty()
                    ? List.of(WHOLE)
                    : c.by().stream().map(By::key).toList();
            parts.forEach(p -> byPart.computeIfAbsent(p, k -> new ArrayList<>()).add(c));
        });
        // Among equals the hash decides: neither the name nor the order of the tasks favours any.
        byPart.values()
                .forEach(list -> list.sort(
                        Comparator.comparing(Impact.AnswerChange::weight).thenComparing(c -> Hashes.sha256(c.key()))));
        Set<String> taken = new LinkedHashSet<>();
        boolean more = true;
        while (more && taken.size() < MOST) {
            more = false;
            for (List<Impact.AnswerChange> list : byPart.values()) {
                if (taken.size() < MOST) {
                    var next = list.stream()
                            .map(Impact.AnswerChange::key)
                            .filter(key -> !taken.contains(key))
                            .findFirst();
                    next.ifPresent(taken::add);
                    more |= next.isPresent();
                }
            }
        }
        return List.copyOf(taken);
    }
}

package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.assessment.Answer;

/**
 * In which order the stages of a line came and the rules over it spoke: a rule that reads a stage comes after what placed it.
 *
 * @param first stages that stand before any rule over the line speaks
 * @param firings rules over the line in order, each with the stages it places
 */
record LineOrder(List<Answer.Fact> first, Map<Answer.Firing, List<Answer.Fact>> firings) {

    static LineOrder of(List<Answer.Fact> stages, List<Answer.Firing> firings) {
        List<Answer.Fact> first = new ArrayList<>();
        List<Answer.Fact> later = new ArrayList<>();
        for (Answer.Fact stage : stages) {
            (placedBy(stage, firings) ? later : first).add(stage);
        }
        Map<Answer.Firing, List<Answer.Fact>> ordered = new LinkedHashMap<>();
        List<Answer.Firing> open = new ArrayList<>(firings);
        while (!open.isEmpty()) {
            Set<String> missing = new HashSet<>();
            later.forEach(f -> missing.add(f.id()));
            Answer.Firing next = open.stream()
                    .filter(f -> f.matched().stream().noneMatch(missing::contains))
                    .findFirst()
                    .orElseGet(() -> open.get(0));
            // Rules that place each other's stages: those stages have to stand before either is told.
            List<Answer.Fact> early =
                    later.stream().filter(s -> next.matched().contains(s.id())).toList();
            first.addAll(early);
            later.removeAll(early);
            List<Answer.Fact> placed =
                    later.stream().filter(s -> s.firings().contains(next.n())).toList();
            later.removeAll(placed);
            ordered.put(next, placed);
            open.remove(next);
        }
        return new LineOrder(first, ordered);
    }

    private static boolean placedBy(Answer.Fact stage, List<Answer.Firing> firings) {
        return !stage.firings().isEmpty()
                && stage.firings().stream().allMatch(n -> firings.stream().anyMatch(f -> f.n() == n));
    }
}

package org.washwright.casework;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.washwright.problem.ProblemError;

/** The tasks that an address names, in the turn it gives them. */
record PlantChoice(List<PlantLoads.Asked> asked, Map<UUID, String> parts, Map<UUID, String> turns) {

    static PlantChoice of(MultivaluedMap<String, String> query, List<TaskView> all) {
        List<String> ticked = query.getOrDefault("task", List.of());
        Map<UUID, String> parts = new HashMap<>();
        Map<UUID, String> turns = new HashMap<>();
        List<PlantLoads.Asked> asked = new ArrayList<>();
        for (TaskView task : all) {
            parts.put(task.id(), first(query, "parts-" + task.id()));
            turns.put(task.id(), first(query, "turn-" + task.id()));
            if (ticked.contains(task.id().toString())) {
                asked.add(new PlantLoads.Asked(task.id(), parts.get(task.id())));
            }
        }
        // Sorting keeps the order of the list among those of one turn; those without come last.
        asked.sort(Comparator.comparingInt(a -> turn(turns.get(a.id()))));
        return new PlantChoice(asked, parts, turns);
    }

    private static String first(MultivaluedMap<String, String> query, String name) {
        String text = Optional.ofNullable(query.getFirst(name)).orElse("").strip();
        return text.length() > 80 ? text.substring(0, 80) : text;
    }

    private static int turn(String text) {
        return text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : Integer.MAX_VALUE;
    }

    List<PlantSight.Pick> picks(List<TaskView> all, List<ProblemError> errors) {
        return all.stream()
                .map(t -> new PlantSight.Pick(
                        t.id(),
                        t.title(),
                        asked.stream().anyMatch(a -> a.id().equals(t.id())),
                        parts.get(t.id()),
                        turns.get(t.id()),
                        errors.stream()
                                .filter(e -> e.pointer().equals(Optional.of("parts-" + t.id())))
                                .map(ProblemError::message)
                                .findFirst()
                                .orElse("")))
                .toList();
    }
}

package org.washwright.explain.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Hashes;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;
import org.washwright.task.TaskWriter;

/** Makes changes as a reader of a result would: types them into the document of the task and has it read anew. */
final class Applied {

    private Applied() {}

    static CleaningTask to(CleaningTask task, Collection<Changes.Change> changes, Edition edition) {
        Map<String, Object> document = TaskWriter.data(task, edition);
        Map<String, List<Integer>> gone = new LinkedHashMap<>();
        for (Changes.Change c : changes) {
            String[] steps = c.pointer().substring(1).split("/", -1);
            switch (c.way()) {
                case "remove" ->
                    gone.computeIfAbsent(steps[0], k -> new ArrayList<>()).add(Integer.parseInt(steps[1]));
                case "close" -> document.put(steps[0], list(document, steps[0]));
                default -> set(document, steps, c.value(), c.way().equals("add"));
            }
        }
        gone.forEach((list, numbers) -> {
            numbers.sort(java.util.Comparator.reverseOrder());
            numbers.forEach(n -> list(document, list).remove((int) n));
        });
        byte[] bytes = Hashes.canonical(document);
        Diagnostics diagnostics = new Diagnostics();
        return TaskReader.read(
                        DocumentReader.read("changed", bytes, diagnostics).orElseThrow(), edition, diagnostics)
                .orElseThrow(() -> new AssertionError(List.copyOf(diagnostics.all()) + " "
                        + new String(bytes, java.nio.charset.StandardCharsets.UTF_8)));
    }

    @SuppressWarnings("unchecked")
    private static List<Object> list(Map<String, Object> document, String key) {
        Object there = document.get(key);
        if (there instanceof Map<?, ?> open) {
            return (List<Object>) open.get("list");
        }
        if (there == null) {
            Map<String, Object> open = new LinkedHashMap<>();
            open.put("open", "yes");
            open.put("list", new ArrayList<>());
            document.put(key, open);
            return list(document, key);
        }
        return (List<Object>) there;
    }

    @SuppressWarnings("unchecked")
    private static void set(Map<String, Object> document, String[] steps, String value, boolean added) {
        Map<String, Object> entry;
        if (steps.length == 3) {
            List<Object> list = list(document, steps[0]);
            int index = Integer.parseInt(steps[1]);
            if (added) {
                // All else does not apply to what was only just added.
                list.add(new LinkedHashMap<>(Map.of("rest", "not applicable")));
            }
            entry = (Map<String, Object>) list.get(index);
        } else {
            Object there = document.get(steps[0]);
            if (!(there instanceof Map)) {
                document.put(steps[0], new LinkedHashMap<String, Object>());
            }
            entry = (Map<String, Object>) document.get(steps[0]);
        }
        entry.put(steps[steps.length - 1], value);
    }
}

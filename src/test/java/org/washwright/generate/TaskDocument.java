package org.washwright.generate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Hashes;
import org.washwright.document.Node;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.TaskWriter;
import org.washwright.task.Value;

/** A task as the document that says it, and what of a task must survive any way of writing it. */
public final class TaskDocument {

    private TaskDocument() {}

    /** The document of a task in which no tree was played. */
    public static Node of(CleaningTask task, Edition edition) {
        byte[] json = Hashes.canonical(TaskWriter.data(task, edition));
        return DocumentReader.read("task.json", json, new Diagnostics()).orElseThrow();
    }

    /** All that a task says: what is not said and what is said to be unknown are the same. */
    public static Map<String, Object> said(CleaningTask task) {
        Map<String, Object> out = new TreeMap<>();
        out.put("title", task.title());
        out.put("notes", task.notes());
        for (Group group : Group.values()) {
            CleaningTask.Entries entries = task.entries(group);
            if (group.appliesOnlyWhenGiven()) {
                out.put(group.key() + " given", !entries.entries().isEmpty());
            }
            List<Object> list = new ArrayList<>();
            entries.entries().forEach(e -> list.add(said(e.given())));
            boolean silent = !group.isList() && (list.isEmpty() || list.equals(List.of(Map.of())));
            out.put(group.key(), silent ? List.of() : list);
            out.put(group.key() + " open", group.isList() && entries.open());
        }
        out.put("attributes", said(task.declared()));
        return out;
    }

    private static Map<String, Object> said(Map<String, Given> given) {
        Map<String, Object> out = new TreeMap<>();
        given.forEach((name, g) -> {
            if (!(g.value() instanceof Value.Unknown) || !g.treePath().isEmpty()) {
                out.put(name, List.of(g.value(), g.code(), g.treePath(), g.overruled(), g.pointer()));
            }
        });
        return out;
    }
}

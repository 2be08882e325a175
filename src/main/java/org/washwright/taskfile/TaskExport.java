package org.washwright.taskfile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.document.Hashes;
import org.washwright.document.Node;
import org.washwright.rule.Edition;
import org.washwright.task.Group;

/**
 * Writes a task document as a file of any kind, with the words and units it was given in, and the template of each kind by
 * the words of an edition.
 */
public final class TaskExport {

    private final Edition edition;
    private final TaskForms forms;

    /** Writes by the words of this edition. */
    public TaskExport(Edition edition) {
        this.edition = edition;
        this.forms = new TaskForms(edition);
    }

    /** A task document as a file. */
    public byte[] task(Node document, TaskFormat format) {
        return switch (format) {
            case YAML -> utf8(YamlText.of(document));
            case JSON -> Hashes.canonical(data(document));
            case CSV -> utf8(table(TaskFlat.of(document)));
            case XLSX -> new WorkbookWriter(forms).write(TaskFlat.of(document));
        };
    }

    /** A file to fill in: everything that can be said, with what is asked and what may be written. */
    public byte[] template(TaskFormat format) {
        return switch (format) {
            case YAML -> utf8(TemplateText.yaml(forms, edition));
            case JSON -> Hashes.canonical(TemplateText.json(edition));
            case CSV -> utf8(template());
            case XLSX -> new WorkbookWriter(forms).write(Map.of());
        };
    }

    /** A node as plain maps, lists and texts. */
    public static Object data(Node node) {
        if (node instanceof Node.MapNode map) {
            Map<String, Object> out = new LinkedHashMap<>();
            map.entries().forEach(e -> out.put(e.key(), data(e.value())));
            return out;
        }
        return node instanceof Node.ListNode list
                ? list.items().stream().map(TaskExport::data).toList()
                : node.shown();
    }

    private static String table(Map<String, String> cells) {
        StringBuilder out = new StringBuilder();
        row(out, TaskTable.ON_ITS_SIDE);
        cells.forEach((path, text) ->
                row(out, List.of(path, TaskPaths.TEXTS.contains(path) ? TaskCells.guarded(text) : text)));
        return out.toString();
    }

    private String template() {
        StringBuilder out = new StringBuilder();
        List<String> header = new ArrayList<>(TaskTable.ON_ITS_SIDE);
        header.addAll(List.of("question", "may be"));
        row(out, header);
        for (TaskForms.Line line : forms.single()) {
            row(out, List.of(line.path(), "", line.question(), line.mayBe()));
            Group.byKey(line.path().replaceFirst("/.*", ""))
                    .filter(Group::isList)
                    .ifPresent(group -> forms.entry(group, group.key() + "/0/")
                            .forEach(l -> row(out, List.of(l.path(), "", l.question(), l.mayBe()))));
        }
        return out.toString();
    }

    private static void row(StringBuilder out, List<String> cells) {
        out.append(String.join(",", cells.stream().map(TaskExport::cell).toList()))
                .append("\r\n");
    }

    private static String cell(String text) {
        boolean plain = text.matches("[A-Za-z0-9][^,\"\r\n]*(?<! )|");
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

package org.washwright.task;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.washwright.quantity.ExactText;

/** Writes a task as the document that reads back as the same task: plain data for JSON, or YAML. */
public final class TaskWriter {

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ._/()%+°²³µ·-]*");
    private static final Pattern READ_AS_SOMETHING_ELSE = Pattern.compile("(?i)null|~");

    private TaskWriter() {}

    /** The task as maps, lists and texts; {@code vocabulary} knows the types of the attributes that an edition declares. */
    public static Map<String, Object> data(CleaningTask task, Vocabulary vocabulary) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("title", task.title());
        if (!task.notes().isEmpty()) {
            out.put("notes", task.notes());
        }
        task.lists().forEach((group, entries) -> group(out, group, entries));
        Map<String, Object> declared = new LinkedHashMap<>();
        task.declared()
                .forEach((id, given) -> declared.put(
                        id, value(given, vocabulary.declaredAttributes().get(id).type())));
        if (!declared.isEmpty()) {
            out.put("attributes", declared);
        }
        return out;
    }

    private static void group(Map<String, Object> out, Group group, CleaningTask.Entries entries) {
        List<Object> list = new ArrayList<>();
        entries.entries().forEach(e -> list.add(entry(group, e)));
        if (!group.isList()) {
            if (!list.isEmpty()) {
                out.put(group.key(), entries.entries().get(0).given().isEmpty() ? "unknown" : list.get(0));
            }
        } else if (!entries.open()) {
            out.put(group.key(), list);
        } else if (!list.isEmpty()) {
            Map<String, Object> open = new LinkedHashMap<>();
            open.put("open", "yes");
            open.put("list", list);
            out.put(group.key(), open);
        }
    }

    /** Attributes in the order in which the group asks for them; where all are given, those that do not apply in one word. */
    private static Map<String, Object> entry(Group group, Entry entry) {
        boolean complete = group.attributes().stream()
                .filter(a -> !a.computed())
                .allMatch(a -> entry.given().containsKey(a.name()));
        Map<String, Object> out = new LinkedHashMap<>();
        boolean rest = false;
        for (Attribute a : group.attributes()) {
            Given given = entry.given().get(a.name());
            if (given != null && complete && given.value() instanceof Value.NotApplicable) {
                rest = true;
            } else if (given != null) {
                out.put(a.name(), value(given, a.type()));
            }
        }
        if (rest) {
            out.put(Group.REST, Value.NOT_APPLICABLE.knowledge());
        }
        return out;
    }

    private static Object value(Given given, FieldType type) {
        if (!given.code().isEmpty()) {
            return given.code();
        }
        if (given.value() instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return ExactText.of(n.span(), t.dimension());
        }
        if (given.value() instanceof Value.OneOf o) {
            return o.terms().size() == 1 ? o.terms().first() : List.copyOf(o.terms());
        }
        return given.value().knowledge();
    }

    /** The task as YAML, each line behind these blanks. */
    public static String yaml(CleaningTask task, Vocabulary vocabulary, String blanks) {
        StringBuilder out = new StringBuilder();
        data(task, vocabulary).forEach((key, value) -> {
            out.append(blanks).append(key).append(':');
            if (value instanceof List<?> list && !list.isEmpty()) {
                list.forEach(
                        item -> out.append('\n').append(blanks).append("  - ").append(flow(item)));
            } else {
                out.append(' ').append(flow(value));
            }
            out.append('\n');
        });
        return out.toString();
    }

    /** A value on one line of YAML. */
    public static String flow(Object value) {
        if (value instanceof Map<?, ?> map) {
            return "{"
                    + String.join(
                            ", ",
                            map.entrySet().stream()
                                    .map(e -> e.getKey() + ": " + flow(e.getValue()))
                                    .toList())
                    + "}";
        }
        if (value instanceof List<?> list) {
            return "[" + String.join(", ", list.stream().map(TaskWriter::flow).toList()) + "]";
        }
        String text = String.valueOf(value);
        boolean plain = PLAIN.matcher(text).matches()
                && !text.endsWith(" ")
                && !READ_AS_SOMETHING_ELSE.matcher(text).matches();
        return plain ? text : '"' + escaped(text) + '"';
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace("\"", "\\\"")
                .replace("\n", "\\n")
                .replace("\r", "\\r")
                .replace("\t", "\\t");
    }
}

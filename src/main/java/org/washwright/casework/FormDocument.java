package org.washwright.casework;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/** Turns the fields of the form into the document that a file or a program would send. */
final class FormDocument {
    static final String UNKNOWN = "unknown";
    static final String NOT_APPLICABLE = "not applicable";

    private static final ObjectMapper JSON = new ObjectMapper();

    private FormDocument() {}

    static byte[] write(FormFields fields, Vocabulary vocabulary) {
        Map<String, Object> document = new LinkedHashMap<>();
        put(document, "title", fields.first("title"));
        put(document, "notes", fields.first("notes"));
        for (Group group : Group.values()) {
            if (group.isList()) {
                list(fields, group).ifPresent(list -> document.put(group.key(), list));
            } else {
                Map<String, Object> entry = entry(fields, group, group.key());
                if (!entry.isEmpty()) {
                    document.put(group.key(), entry);
                }
            }
        }
        Map<String, Object> declared = new LinkedHashMap<>();
        vocabulary
                .declaredAttributes()
                .forEach((id, attribute) ->
                        value(fields, "attributes." + id, attribute.type()).ifPresent(v -> declared.put(id, v)));
        if (!declared.isEmpty()) {
            document.put("attributes", declared);
        }
        try {
            return JSON.writerWithDefaultPrettyPrinter()
                    .writeValueAsString(document)
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of text can always be written", e);
        }
    }

    private static void put(Map<String, Object> document, String key, String text) {
        if (!text.isEmpty()) {
            document.put(key, text);
        }
    }

    /** A list as rows; nothing when it is open and empty, which says nothing. */
    private static Optional<Object> list(FormFields fields, Group group) {
        boolean open = fields.ticked(group.key() + ".open");
        int rows = fields.rows(group);
        if (open && rows == 0) {
            return Optional.empty();
        }
        boolean single = group.attributes().stream().filter(a -> !a.computed()).count() == 1;
        List<Object> list = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            Map<String, Object> entry = entry(fields, group, group.key() + "." + row);
            // A group of one attribute is written in its short form, as people write it in files.
            Object only = entry.values().stream().findFirst().orElse(UNKNOWN);
            list.add(single && only instanceof String ? only : entry);
        }
        return Optional.of(open ? openList(list) : list);
    }

    private static Map<String, Object> openList(List<Object> list) {
        Map<String, Object> open = new LinkedHashMap<>();
        open.put("open", true);
        open.put("list", list);
        return open;
    }

    private static Map<String, Object> entry(FormFields fields, Group group, String prefix) {
        Map<String, Object> entry = new LinkedHashMap<>();
        group.attributes().stream()
                .filter(a -> !a.computed())
                .forEach(a -> value(fields, prefix + "." + a.name(), a.type()).ifPresent(v -> entry.put(a.name(), v)));
        return entry;
    }

    static Optional<Object> value(FormFields fields, String name, FieldType type) {
        Optional<Object> typed = typed(fields, name, type);
        String tree = fields.first(name + ".tree");
        if (tree.isEmpty()) {
            return typed;
        }
        Map<String, Object> played = new LinkedHashMap<>();
        typed.filter(v -> !v.equals(UNKNOWN)).ifPresent(v -> played.put("value", v));
        played.put("tree", tree);
        played.put("answers", answers(fields, name));
        return Optional.of(played);
    }

    static List<String> answers(FormFields fields, String name) {
        return Arrays.stream(fields.first(name + ".answers").split(","))
                .filter(a -> !a.isEmpty())
                .toList();
    }

    private static Optional<Object> typed(FormFields fields, String name, FieldType type) {
        String text = fields.first(name);
        if (fields.ticked(name + ".none")) {
            return Optional.of(NOT_APPLICABLE);
        }
        // Said outright to be unknown, and nothing else said since.
        if (fields.ticked(name + ".unknown")
                && text.isEmpty()
                && fields.all(name + ".any").isEmpty()) {
            return Optional.of(UNKNOWN);
        }
        if (type instanceof FieldType.TermType) {
            if (text.equals(NOT_APPLICABLE)) {
                return Optional.of(NOT_APPLICABLE);
            }
            List<String> terms = Stream.concat(Stream.of(text), fields.all(name + ".any").stream())
                    .filter(t -> !t.isEmpty())
                    .distinct()
                    .toList();
            return terms.size() > 1
                    ? Optional.of(terms)
                    : terms.stream().findFirst().map(t -> (Object) t);
        }
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String unit = fields.first(name + ".unit");
        boolean endsInNumber = Character.isDigit(text.charAt(text.length() - 1));
        return Optional.of(
                type instanceof FieldType.NumberType && endsInNumber && !unit.isEmpty() ? text + " " + unit : text);
    }
}

package org.washwright.task;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON Schema (2020-12) of a cleaning task in JSON, by the words of one edition. Units are checked by the reader: a
 * schema can't.
 */
public final class TaskSchema {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
    private static final String UNKNOWN = "unknown";
    private static final String NOT_APPLICABLE = "not applicable";

    private final Vocabulary vocabulary;
    private final Map<String, Object> definitions = new TreeMap<>();

    private TaskSchema(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The schema as plain maps and lists, ready to be written as JSON. */
    public static Map<String, Object> of(Vocabulary vocabulary) {
        return new TaskSchema(vocabulary).task();
    }

    private Map<String, Object> task() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("title", ordered("type", "string", "minLength", 1, "maxLength", 200));
        properties.put("notes", ordered("type", "string", "maxLength", 10_000));
        properties.put("shows", ordered("type", "string", "maxLength", 10_000));
        Arrays.stream(Group.values()).forEach(group -> properties.put(group.key(), group(group)));
        Map<String, Object> declared = new TreeMap<>();
        vocabulary.declaredAttributes().forEach((id, attribute) -> declared.put(id, value(attribute)));
        properties.put("attributes", map(declared));
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", DIALECT);
        schema.put("title", "Cleaning task");
        schema.put(
                "description",
                "What is left out is not known. A term may be written by its id, its name or a synonym.");
        schema.putAll(map(properties));
        schema.put("required", List.of("title"));
        schema.put("$defs", definitions);
        return schema;
    }

    private Object group(Group group) {
        Map<String, Object> attributes = new LinkedHashMap<>();
        group.attributes().stream().filter(a -> !a.computed()).forEach(a -> attributes.put(a.name(), value(a)));
        attributes.put(Group.REST, constant(NOT_APPLICABLE));
        if (!group.isList()) {
            return anyOf(map(attributes), constant(UNKNOWN));
        }
        Object first = value(group.attributes().get(0));
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("type", "array");
        list.put("maxItems", group.cap());
        list.put("items", anyOf(map(attributes), first));
        Map<String, Object> open = new LinkedHashMap<>();
        open.put("open", reference("flag"));
        open.put("list", list);
        return anyOf(list, map(open), constant(UNKNOWN));
    }

    private Object value(Attribute attribute) {
        FieldType type = attribute.type();
        if (type instanceof FieldType.NumberType n) {
            String name = "quantity-" + n.dimension().id();
            definitions.computeIfAbsent(name, key -> {
                Map<String, Object> text = new LinkedHashMap<>();
                text.put("type", "string");
                text.put("maxLength", 80);
                text.put("pattern", "[0-9]");
                text.put("examples", List.of(n.dimension().example()));
                Map<String, Object> schema = n.dimension().isPlain()
                        ? anyOf(text, Map.of("type", "number"), nothing())
                        : anyOf(text, nothing());
                schema.put("title", n.dimension().label());
                return schema;
            });
            return reference(name);
        }
        if (type instanceof FieldType.TermType t && !t.isFlag()) {
            return anyOf(term(t.kind()), tree());
        }
        if (type instanceof FieldType.TermType) {
            return reference("flag");
        }
        return anyOf(ordered("type", "string", "maxLength", 200), nothing());
    }

    private Object term(String kind) {
        String name = "term-" + kind;
        definitions.computeIfAbsent(name, key -> {
            List<String> words =
                    new ArrayList<>(vocabulary.words(kind).stream().sorted().toList());
            words.add(UNKNOWN);
            words.add(NOT_APPLICABLE);
            Map<String, Object> several = new LinkedHashMap<>();
            several.put("type", "array");
            several.put("items", Map.of("enum", words));
            return anyOf(Map.of("enum", words), several, Map.of("type", "null"));
        });
        return reference(name);
    }

    private Object tree() {
        definitions.computeIfAbsent("played", key -> {
            Map<String, Object> properties = new LinkedHashMap<>();
            properties.put("value", true);
            properties.put(
                    "tree",
                    Map.of("enum", vocabulary.treeIds().stream().sorted().toList()));
            properties.put("answers", ordered("type", "array", "items", Map.of("type", "string")));
            return map(properties);
        });
        return reference("played");
    }

    private Map<String, Object> reference(String name) {
        if (name.equals("flag")) {
            definitions.computeIfAbsent(
                    name,
                    key -> anyOf(
                            Map.of("type", "boolean"),
                            Map.of("enum", List.of("yes", "no", "true", "false")),
                            nothing()));
        }
        return Map.of("$ref", "#/$defs/" + name);
    }

    private static Map<String, Object> nothing() {
        return anyOf(constant(UNKNOWN), constant(NOT_APPLICABLE), Map.of("type", "null"));
    }

    private static Map<String, Object> constant(String text) {
        return Map.of("const", text);
    }

    private static Map<String, Object> anyOf(Object... schemas) {
        Map<String, Object> any = new LinkedHashMap<>();
        any.put("anyOf", List.of(schemas));
        return any;
    }

    private static Map<String, Object> map(Map<String, Object> properties) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("type", "object");
        map.put("properties", properties);
        map.put("additionalProperties", false);
        return map;
    }

    /** Keys in a fixed order, so that the schema is written the same every time. */
    private static Map<String, Object> ordered(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }
}

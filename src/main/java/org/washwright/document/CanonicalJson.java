package org.washwright.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;
import org.erdtman.jcs.NumberToJSON;

/**
 * Canonical JSON (RFC 8785) of a tree: names in order of their UTF-16 units, texts escaped as little as may be, numbers as ECMAScript
 * writes them. The library of the standard's author reads text; a tree that is there already need not be written and read again.
 */
final class CanonicalJson {

    /** Whole numbers up to here are exact as doubles and are written digit by digit. */
    private static final long EXACT = 1L << 53;

    private static final int FIRST_PLAIN = 0x20;

    private CanonicalJson() {}

    /** The bytes, in UTF-8. */
    static byte[] bytes(JsonNode tree) throws IOException {
        StringBuilder out = new StringBuilder();
        write(tree, out);
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void write(JsonNode node, StringBuilder out) throws IOException {
        switch (node.getNodeType()) {
            case OBJECT -> object(node, out);
            case ARRAY -> array(node, out);
            case STRING -> text(node.textValue(), out);
            case NUMBER -> number(node, out);
            case BOOLEAN -> out.append(node.booleanValue());
            case NULL -> out.append("null");
            default -> throw new IOException("JSON has no " + node.getNodeType());
        }
    }

    private static void object(JsonNode node, StringBuilder out) throws IOException {
        TreeMap<String, JsonNode> sorted = new TreeMap<>();
        Iterator<Map.Entry<String, JsonNode>> fields = node.fields();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            sorted.put(field.getKey(), field.getValue());
        }
        char joint = '{';
        for (Map.Entry<String, JsonNode> field : sorted.entrySet()) {
            out.append(joint);
            text(field.getKey(), out);
            out.append(':');
            write(field.getValue(), out);
            joint = ',';
        }
        out.append(joint == '{' ? "{}" : "}");
    }

    private static void array(JsonNode node, StringBuilder out) throws IOException {
        char joint = '[';
        for (JsonNode item : node) {
            out.append(joint);
            write(item, out);
            joint = ',';
        }
        out.append(joint == '[' ? "[]" : "]");
    }

    private static void number(JsonNode node, StringBuilder out) throws IOException {
        if (node.isIntegralNumber() && node.canConvertToLong() && Math.abs(node.longValue()) < EXACT) {
            out.append(node.longValue());
        } else {
            out.append(NumberToJSON.serializeNumber(node.doubleValue()));
        }
    }

    private static void text(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\f' -> out.append("\\f");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (c < FIRST_PLAIN) {
                        out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }
}

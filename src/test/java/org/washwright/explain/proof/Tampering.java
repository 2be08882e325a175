package org.washwright.explain.proof;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.washwright.document.Hashes;

/** Changes one thing in an answer as somebody would who wants it to say something else, and computes its hashes anew. */
final class Tampering {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Random random;

    Tampering(Random random) {
        this.random = random;
    }

    /** A changed answer in canonical form with right hashes, and what was changed. */
    record Tampered(byte[] bytes, String what) {}

    /** Some change somewhere; each part of an answer is as likely, however long it is. */
    Tampered tamper(byte[] answer) throws IOException {
        ObjectNode root = (ObjectNode) JSON.readTree(answer);
        String what = "";
        while (what.isEmpty()) {
            List<String> parts = new ArrayList<>();
            root.fieldNames().forEachRemaining(parts::add);
            String part = parts.get(random.nextInt(parts.size()));
            what = part.equals("requestHash") ? "" : descend(root, part, "/" + part);
        }
        return new Tampered(sealed(root), what);
    }

    /** The answer with the hash of its request and its bytes as an honest program would write them. */
    static byte[] sealed(ObjectNode root) throws IOException {
        root.put("requestHash", Hashes.sha256(Hashes.canonical(root.get("request"))));
        return Hashes.canonical(root);
    }

    private String descend(ObjectNode parent, String name, String at) {
        // Date and seed say what was asked; with another one it is an answer to another question, which may be the
        // same.
        if (at.equals("/request/asOf") || at.equals("/request/seed")) {
            return "";
        }
        JsonNode node = parent.get(name);
        if (node instanceof ObjectNode object && !object.isEmpty()) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String next = names.get(random.nextInt(names.size()));
            return descend(object, next, at + "/" + next);
        }
        if (node instanceof ArrayNode list && !list.isEmpty()) {
            return inList(list, at);
        }
        if (node.isTextual()) {
            parent.set(name, other(node));
        } else if (node.isNumber()) {
            parent.set(name, other(node));
        } else if (node.isBoolean()) {
            parent.put(name, !node.booleanValue());
        } else {
            return "";
        }
        return at + " was " + node;
    }

    private String inList(ArrayNode list, String at) {
        int i = random.nextInt(list.size());
        switch (random.nextInt(6)) {
            case 0 -> {
                list.remove(i);
                return at + "/" + i + " was taken out";
            }
            case 1 -> {
                list.insert(i, list.get(i).deepCopy());
                return at + "/" + i + " stands twice";
            }
            default -> {
                JsonNode node = list.get(i);
                if (node instanceof ObjectNode object && !object.isEmpty()) {
                    List<String> names = new ArrayList<>();
                    object.fieldNames().forEachRemaining(names::add);
                    String next = names.get(random.nextInt(names.size()));
                    return descend(object, next, at + "/" + i + "/" + next);
                }
                if (node instanceof ArrayNode inner && !inner.isEmpty()) {
                    return inList(inner, at + "/" + i);
                }
                if (!node.isTextual() && !node.isNumber()) {
                    return "";
                }
                list.set(i, other(node));
                return at + "/" + i + " was " + node;
            }
        }
    }

    private JsonNode other(JsonNode node) {
        if (node.isNumber()) {
            double value = node.doubleValue();
            return DoubleNode.valueOf(random.nextBoolean() ? value + 1 : value * 1.001 + 0.001);
        }
        String text = node.asText();
        return TextNode.valueOf(
                switch (text) {
                    case "recommended" -> "conditional";
                    case "conditional" -> "recommended";
                    default -> random.nextBoolean() ? text + "x" : text.isEmpty() ? "x" : text.substring(1);
                });
    }
}

package org.washwright.generate;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;

/** Writes a YAML document as JSON. */
public final class Json {

    private Json() {}

    /** The same document in JSON, every value as text. */
    public static String of(String yaml) {
        Node node = DocumentReader.read("t.yaml", yaml, new Diagnostics()).orElseThrow();
        try {
            return new ObjectMapper().writeValueAsString(plain(node));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static Object plain(Node node) {
        if (node instanceof Node.MapNode map) {
            Map<String, Object> out = new LinkedHashMap<>();
            map.entries().forEach(e -> out.put(e.key(), plain(e.value())));
            return out;
        }
        if (node instanceof Node.ListNode list) {
            List<Object> out = new ArrayList<>();
            list.items().forEach(i -> out.add(plain(i)));
            return out;
        }
        return node.shown();
    }
}

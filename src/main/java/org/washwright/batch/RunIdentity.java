package org.washwright.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.assessment.Program;
import org.washwright.assessment.Wishes;
import org.washwright.document.Hashes;
import org.washwright.rule.Edition;

/**
 * What decides the bytes of an output besides its records: two runs may share a file only when this is the same.
 *
 * @param data by name, as plain JSON
 */
record RunIdentity(JsonNode data) {

    private static final int FORMAT = 1;
    private static final String AS_OF = "asOf";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static RunIdentity of(Edition edition, Wishes wishes, String signature, boolean full) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("format", FORMAT);
        data.put("program", Program.text());
        data.put("edition", edition.name());
        data.put("editionText", edition.textHash());
        data.put(AS_OF, wishes.asOf());
        data.put("weights", wishes.weights());
        data.put("assumptions", wishes.assumptions());
        data.put("seed", wishes.seed());
        data.put("columns", signature);
        data.put("full", full);
        return read(Hashes.canonical(data)).orElseThrow();
    }

    static Optional<RunIdentity> read(byte[] json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            return node instanceof ObjectNode ? Optional.of(new RunIdentity(node)) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("bytes in memory can always be read", e);
        }
    }

    byte[] bytes() {
        return (data.toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    Optional<String> asOf() {
        return Optional.ofNullable(data.get(AS_OF)).map(JsonNode::asText);
    }

    /** Names of what differs. */
    List<String> differences(RunIdentity other) {
        TreeSet<String> names = new TreeSet<>();
        data.fieldNames().forEachRemaining(names::add);
        other.data.fieldNames().forEachRemaining(names::add);
        names.removeIf(n -> data.path(n).equals(other.data.path(n)));
        return List.copyOf(names);
    }
}

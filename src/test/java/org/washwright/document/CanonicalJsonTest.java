package org.washwright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;

/** Held against the reference implementation of RFC 8785, which reads text. */
class CanonicalJsonTest {

    private static final long SEED = 8785;
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final double[] NUMBERS = {
        0,
        -0.0,
        1,
        -1,
        0.1,
        1e21,
        1e-7,
        123456789012345680000.0,
        5e-324,
        1.7976931348623157e308,
        333333333.3333333,
        1e23,
        4.5,
        9007199254740991.0,
        9007199254740992.0,
        2e-3,
        1e-27,
        6.02e23
    };

    @Test
    void random_trees_come_out_as_the_reference_writes_them() throws IOException {
        Random random = new Random(SEED);
        for (int i = 0; i < 400; i++) {
            JsonNode tree = MAPPER.createObjectNode().set("of", node(random, 4));
            assertEquals(reference(tree), ours(tree));
        }
    }

    @Test
    void answers_of_demo_tasks_come_out_as_the_reference_writes_them() throws IOException {
        for (String task : new String[] {"bearing-rings.yaml", "contract-shop.yaml"}) {
            byte[] bytes = Starter.swept()
                    .assess(Starter.task(Starter.demoTexts().get(task)), Starter.WISHES)
                    .bytes();
            String text = new String(bytes, StandardCharsets.UTF_8);
            assertEquals(new JsonCanonicalizer(text).getEncodedString(), text);
        }
    }

    @Test
    void what_is_no_number_has_no_canonical_form() {
        assertThrows(IOException.class, () -> ours(MAPPER.createObjectNode().put("x", Double.NaN)));
        assertThrows(IOException.class, () -> ours(MAPPER.createObjectNode().put("x", Double.POSITIVE_INFINITY)));
    }

    private static String ours(JsonNode tree) throws IOException {
        return new String(CanonicalJson.bytes(tree), StandardCharsets.UTF_8);
    }

    private static String reference(JsonNode tree) throws IOException {
        return new String(
                new JsonCanonicalizer(MAPPER.writeValueAsString(tree)).getEncodedUTF8(), StandardCharsets.UTF_8);
    }

    private static JsonNode node(Random random, int depth) {
        switch (random.nextInt(depth > 0 ? 8 : 6)) {
            case 0:
                return MAPPER.getNodeFactory().textNode(text(random));
            case 1:
                return MAPPER.getNodeFactory().numberNode(NUMBERS[random.nextInt(NUMBERS.length)]);
            case 2:
                return MAPPER.getNodeFactory().numberNode(random.nextLong());
            case 3:
                return MAPPER.getNodeFactory()
                        .numberNode(random.nextGaussian() * Math.pow(10, random.nextInt(60) - 30));
            case 4:
                return MAPPER.getNodeFactory().booleanNode(random.nextBoolean());
            case 5:
                return MAPPER.getNodeFactory().nullNode();
            case 6:
                ArrayNode array = MAPPER.createArrayNode();
                for (int i = random.nextInt(5); i > 0; i--) {
                    array.add(node(random, depth - 1));
                }
                return array;
            default:
                ObjectNode object = MAPPER.createObjectNode();
                for (int i = random.nextInt(6); i > 0; i--) {
                    object.set(text(random), node(random, depth - 1));
                }
                return object;
        }
    }

    /** Texts with signs that are escaped, of several scripts, and outside the basic plane. */
    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            switch (random.nextInt(4)) {
                case 0 -> text.append((char) random.nextInt(0x30));
                case 1 -> text.append((char) (0x20 + random.nextInt(0x60)));
                case 2 -> text.append((char) (0x80 + random.nextInt(0x2000)));
                default -> text.appendCodePoint(0x1F300 + random.nextInt(0x100));
            }
        }
        return text.toString();
    }
}

package org.washwright.explain.proof;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Says what stands at a place of an answer, by the names that the answer gives to what lies on the way there. */
final class PlaceWords {

    private static final List<String> NAMES = List.of("name", "label", "title", "rule", "question", "text", "sentence");

    private PlaceWords() {}

    static String of(String pointer, JsonNode answer) {
        List<String> words = new ArrayList<>();
        JsonNode node = answer;
        String list = "";
        for (String step : pointer.substring(1).split("/", -1)) {
            String name = step.replace("~1", "/").replace("~0", "~");
            boolean place = node.isArray() && name.matches("[0-9]{1,6}");
            node = place ? node.path(Integer.parseInt(name)) : node.path(name);
            if (place) {
                words.add(singular(list) + " " + called(node, Integer.parseInt(name) + 1));
            } else {
                list = name;
                if (!node.isArray()) {
                    words.add(spaced(name));
                }
            }
        }
        return words.isEmpty() ? spaced(list) : String.join(", ", words);
    }

    private static String called(JsonNode node, int place) {
        if (node.isTextual()) {
            return node.asText();
        }
        return NAMES.stream()
                .map(n -> node.path(n).asText(""))
                .filter(t -> !t.isEmpty())
                .map(t -> "“" + t + "”")
                .findFirst()
                .orElse(String.valueOf(place));
    }

    private static String singular(String list) {
        String spaced = spaced(list);
        return spaced.endsWith("ies")
                ? spaced.substring(0, spaced.length() - 3) + "y"
                : spaced.endsWith("s") ? spaced.substring(0, spaced.length() - 1) : spaced;
    }

    /** A name of the form in words: {@code ruledOut} as "ruled out". */
    private static String spaced(String name) {
        return name.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(java.util.Locale.ROOT);
    }
}

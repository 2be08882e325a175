package org.washwright.casework;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Node;
import org.washwright.plant.Plant;

/**
 * The fields of the plant form as they were typed. A field is named by the JSON pointer of what it says, so that an error at a
 * place in the document is an error of that field. Immutable.
 *
 * @param texts single fields by pointer
 * @param stages stages besides the main one, ticked, in their order
 * @param stagesKnown false when nobody knows which stages the plant has
 * @param solvents solvent classes ticked
 */
record PlantForm(Map<String, String> texts, List<String> stages, boolean stagesKnown, List<String> solvents) {
    static final String STAGES = "/stages";
    static final String SOLVENTS = "/solvents";
    static final String SETTINGS = "/settings/";

    /** Says that the stages ticked are all there are. */
    static final String KNOWN = "stages-known";

    /** The stages in the order in which the plant had them. */
    static final String ORDER = "stages-order";

    private static final int TEXT_MOST = 12_000;
    private static final ObjectMapper JSON = new ObjectMapper();

    PlantForm {
        texts = Map.copyOf(texts);
        stages = List.copyOf(stages);
        solvents = List.copyOf(solvents);
    }

    static PlantForm blank() {
        return new PlantForm(Map.of(), List.of(), true, List.of());
    }

    /** What was posted; ticks come in the order of the catalogue, unless the same stages stood in an order of their own. */
    static PlantForm of(Map<String, List<String>> posted) {
        Map<String, String> texts = new TreeMap<>();
        posted.forEach((name, values) -> {
            if (name.startsWith("/") && !name.equals(STAGES) && !name.equals(SOLVENTS) && !values.isEmpty()) {
                String text = values.get(0).strip();
                texts.put(name, text.length() > TEXT_MOST ? text.substring(0, TEXT_MOST) : text);
            }
        });
        List<String> ticked = posted.getOrDefault(STAGES, List.of());
        List<String> before =
                List.of(String.join("", posted.getOrDefault(ORDER, List.of())).split(","));
        boolean same = before.stream()
                .filter(s -> !s.equals(Plant.MAIN))
                .distinct()
                .sorted()
                .toList()
                .equals(ticked.stream().distinct().sorted().toList());
        return new PlantForm(
                texts,
                same ? before : ticked,
                posted.getOrDefault(KNOWN, List.of()).contains("yes"),
                posted.getOrDefault(SOLVENTS, List.of()));
    }

    /** What a document says. */
    static PlantForm of(Node document) {
        Map<String, String> texts = new TreeMap<>();
        List<String> stages = new ArrayList<>();
        List<String> solvents = new ArrayList<>();
        boolean known = false;
        if (document instanceof Node.MapNode map) {
            for (Node.Entry entry : map.entries()) {
                if (entry.key().equals("stages") && entry.value() instanceof Node.ListNode list) {
                    known = true;
                    list.items().forEach(i -> stages.add(i.shown()));
                } else if (entry.key().equals("solvents") && entry.value() instanceof Node.ListNode list) {
                    list.items().forEach(i -> solvents.add(i.shown()));
                } else {
                    flat("/" + entry.key(), entry.value(), texts);
                }
            }
        }
        return new PlantForm(texts, stages, known, solvents);
    }

    private static void flat(String pointer, Node node, Map<String, String> texts) {
        if (node instanceof Node.MapNode map) {
            map.entries().forEach(e -> flat(pointer + "/" + e.key(), e.value(), texts));
        } else if (node instanceof Node.ScalarNode s && !s.text().equals("unknown")) {
            texts.put(pointer, s.text());
        }
    }

    String text(String pointer) {
        return texts.getOrDefault(pointer, "");
    }

    /** The form as a document in JSON; what was left empty is left out. Settings of stages that were unticked go with them. */
    String json() {
        Map<String, Object> out = new LinkedHashMap<>();
        for (String key : List.of("name", "notes", "process")) {
            put(out, key, "/" + key);
        }
        if (stagesKnown) {
            out.put("stages", stages);
        }
        Map<String, Object> settings = new TreeMap<>();
        texts.keySet().stream().filter(p -> p.startsWith(SETTINGS)).forEach(p -> {
            String[] step = p.substring(SETTINGS.length()).split("/", 2);
            boolean there = step[0].equals(Plant.MAIN) || !stagesKnown || stages.contains(step[0]);
            if (step.length == 2 && there && !text(p).isEmpty()) {
                @SuppressWarnings("unchecked")
                Map<String, Object> stage =
                        (Map<String, Object>) settings.computeIfAbsent(step[0], k -> new TreeMap<String, Object>());
                stage.put(step[1], text(p));
            }
        });
        if (!settings.isEmpty()) {
            out.put("settings", settings);
        }
        Map<String, Object> basket = new LinkedHashMap<>();
        List.of("volume", "mass", "area").forEach(k -> put(basket, k, "/basket/" + k));
        if (!basket.isEmpty()) {
            out.put("basket", basket);
        }
        for (String key : List.of("largestPart", "chambers", "hours", "transfer", "availability")) {
            put(out, key, "/" + key);
        }
        if (!solvents.isEmpty()) {
            out.put("solvents", solvents);
        }
        return json(out);
    }

    /** Plain data as JSON in its own order. */
    static String json(Map<String, Object> data) {
        try {
            return JSON.writeValueAsString(data);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("plain data that can't be written", e);
        }
    }

    private void put(Map<String, Object> out, String key, String pointer) {
        if (!text(pointer).isEmpty()) {
            out.put(key, text(pointer));
        }
    }
}

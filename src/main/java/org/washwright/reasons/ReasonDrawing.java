package org.washwright.reasons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.washwright.explain.why.Explanation;
import org.washwright.explain.why.Kind;
import org.washwright.explain.why.Thing;

/**
 * An explanation drawn as boxes from left to right: what is said, what that rests on, and so on. Only the nearest things are
 * drawn; the table beside holds all. Lengths are in pixels of the drawing.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param boxes the things drawn, in reading order
 * @param lines what rests on what
 * @param left things that are not drawn
 */
record ReasonDrawing(int width, int height, List<Box> boxes, List<String> lines, int left) {

    private static final int BOX = 200;
    private static final int GAP = 42;
    private static final int LINE = 17;
    private static final int HEAD = 22;
    private static final int SPACE = 14;
    private static final int EDGE = 4;
    private static final int MOST_LAYERS = 5;
    private static final int MOST_BOXES = 26;

    /**
     * One thing.
     *
     * @param n its number in the table
     * @param look {@code said}, {@code rule}, {@code open}, {@code ground} or {@code step}
     * @param word what kind of thing it is
     * @param text its words, line by line
     * @param whole its words in one piece
     */
    record Box(int n, int x, int y, int height, String look, String word, List<Row> text, String whole) {}

    /** A line of text and where it stands. */
    record Row(int y, String text) {}

    static ReasonDrawing of(Explanation explanation) {
        Map<String, Thing> all = explanation.byPlace();
        List<Thing> order = explanation.things();
        Map<String, Integer> layers = layers(explanation, all);
        Map<String, Integer> numbers = new HashMap<>();
        for (int i = 0; i < order.size(); i++) {
            numbers.put(order.get(i).at(), i + 1);
        }
        Map<String, Box> boxes = place(all, layers, numbers);
        List<String> lines = new ArrayList<>();
        boxes.forEach((at, from) -> all.get(at).on().stream()
                .map(boxes::get)
                .filter(to -> to != null && to.x() > from.x())
                .forEach(to -> lines.add(line(from, to))));
        int width = boxes.values().stream().mapToInt(b -> b.x() + BOX).max().orElse(0) + EDGE;
        int height =
                boxes.values().stream().mapToInt(b -> b.y() + b.height()).max().orElse(0) + EDGE;
        List<Box> drawn =
                boxes.values().stream().sorted(Comparator.comparing(Box::n)).toList();
        return new ReasonDrawing(width, height, drawn, lines, order.size() - drawn.size());
    }

    /** The nearest things, each in a layer beyond all that rest on it. */
    private static Map<String, Integer> layers(Explanation explanation, Map<String, Thing> all) {
        Map<String, Integer> layers = new LinkedHashMap<>();
        // What has reasons of its own leads on; where these rest in the end is drawn as far as there is room.
        Stream.concat(
                        explanation.things().stream().filter(t -> !t.on().isEmpty()),
                        explanation.things().stream().filter(t -> t.on().isEmpty()))
                .limit(MOST_BOXES)
                .forEach(t -> layers.put(t.at(), 0));
        boolean moved = true;
        while (moved) {
            moved = false;
            for (Map.Entry<String, Integer> e : layers.entrySet()) {
                for (String on : all.get(e.getKey()).on()) {
                    if (layers.containsKey(on) && layers.get(on) <= e.getValue()) {
                        layers.put(on, e.getValue() + 1);
                        moved = true;
                    }
                }
            }
        }
        layers.values().removeIf(layer -> layer >= MOST_LAYERS);
        return layers;
    }

    private static Map<String, Box> place(
            Map<String, Thing> all, Map<String, Integer> layers, Map<String, Integer> numbers) {
        Map<String, Box> boxes = new LinkedHashMap<>();
        int[] next = new int[MOST_LAYERS];
        java.util.Arrays.fill(next, EDGE);
        layers.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue())
                .forEach(e -> {
                    int layer = e.getValue();
                    Thing thing = all.get(e.getKey());
                    List<Row> rows = rows(Wrapped.of(thing.text()), next[layer]);
                    int height = HEAD + rows.size() * LINE + 8;
                    boxes.put(
                            e.getKey(),
                            new Box(
                                    numbers.get(thing.at()),
                                    EDGE + layer * (BOX + GAP),
                                    next[layer],
                                    height,
                                    look(thing.kind()),
                                    thing.kind().word(),
                                    rows,
                                    thing.text()));
                    next[layer] += height + SPACE;
                });
        return boxes;
    }

    private static List<Row> rows(List<String> lines, int top) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            rows.add(new Row(top + HEAD + 12 + i * LINE, lines.get(i)));
        }
        return rows;
    }

    private static String look(Kind kind) {
        return switch (kind) {
            case RULE, CONCLUSION -> "rule";
            case OPEN_RULE, UNKNOWN -> "open";
            case SAID, FINDING, STAGE, WINDOW, POINTS, FIGURE -> "said";
            case COMPUTED -> "step";
            default -> "ground";
        };
    }

    private static String line(Box from, Box to) {
        int x1 = from.x() + BOX;
        int y1 = from.y() + 14;
        int y2 = to.y() + 14;
        int middle = to.x() - GAP / 2;
        return "M" + x1 + " " + y1 + "C" + middle + " " + y1 + " " + middle + " " + y2 + " " + to.x() + " " + y2;
    }

    /** Width of a box. */
    public int box() {
        return BOX;
    }
}

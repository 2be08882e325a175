package org.washwright.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Similar;
import org.washwright.line.sizing.FigureKind;
import org.washwright.line.sizing.LineSizer;
import org.washwright.quantity.Quantities;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.Grading;
import org.washwright.task.FieldType;

/** Reads grading.yaml. */
final class GradingReader {

    /** Prefix of figures of the line, as against properties of the process. */
    private static final String LINE = "line.";

    private final FactTypes types;
    private final Diagnostics diagnostics;
    private final Set<String> criteria = new HashSet<>();

    private GradingReader(FactTypes types, Diagnostics diagnostics) {
        this.types = types;
        this.diagnostics = diagnostics;
    }

    static Grading read(Node node, FactTypes types, Diagnostics diagnostics) {
        return new GradingReader(types, diagnostics).grading(node);
    }

    private Grading grading(Node node) {
        MapReader map = MapReader.of(node, "grading.yaml", diagnostics);
        Map<Integer, Double> steps = new TreeMap<>();
        for (Node.Entry step : map.entries("steps")) {
            if (step.key().matches("[123]")) {
                MapReader.number(step.value(), diagnostics).ifPresent(v -> steps.put(Integer.valueOf(step.key()), v));
            } else {
                diagnostics.add(Message.GRADING_SHAPE, step.keyPlace(), step.key(), "steps are 1, 2 and 3");
            }
        }
        if (steps.size() != 3) {
            diagnostics.add(Message.GRADING_SHAPE, map.place(), "", "steps needs a value for each of 1, 2 and 3");
        }
        List<Grading.Area> areas = new ArrayList<>();
        for (Node item : map.list("areas")) {
            areas.add(area(item));
        }
        map.noMore();
        if (!areas.stream().map(Grading.Area::id).toList().equals(Grading.AREAS)) {
            diagnostics.add(
                    Message.GRADING_SHAPE,
                    map.place(),
                    "",
                    "the areas are " + String.join(", ", Grading.AREAS) + ", in this order");
        }
        return new Grading(steps, areas);
    }

    private Grading.Area area(Node node) {
        MapReader map = MapReader.of(node, "an area", diagnostics);
        List<Grading.Criterion> list = new ArrayList<>();
        for (Node item : map.list("criteria")) {
            list.add(criterion(item));
        }
        Grading.Area area = new Grading.Area(map.id("id"), map.required("name"), weight(map), List.copyOf(list));
        if (list.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, map.place(), "", "the area \"" + area.id() + "\"", "criteria");
        }
        map.noMore();
        return area;
    }

    private Grading.Criterion criterion(Node node) {
        MapReader map = MapReader.of(node, "a criterion", diagnostics);
        String id = map.id("id");
        if (!criteria.add(id)) {
            diagnostics.add(Message.DUPLICATE_ID, node.place(), id, "criterion", "another criterion");
        }
        double start = map.number("start", 50);
        if (start < 0 || start > 100) {
            diagnostics.add(Message.OUT_OF_RANGE, node.place(), String.valueOf(start), "0 to 100 points");
        }
        Grading.Criterion criterion = new Grading.Criterion(
                id, map.required("name"), weight(map), start, map.get("figure").flatMap(this::figure));
        map.noMore();
        return criterion;
    }

    private double weight(MapReader map) {
        double weight = map.number("weight", 1);
        if (weight < 0) {
            diagnostics.add(Message.OUT_OF_RANGE, map.place(), String.valueOf(weight), "0 or more");
        }
        return weight;
    }

    private Optional<Grading.Figure> figure(Node node) {
        MapReader map = MapReader.of(node, "a figure", diagnostics);
        String of = map.required("of");
        List<Node> points = map.list("curve");
        map.noMore();
        Optional<Grading.Figure> scale = scale(node, of);
        if (scale.isEmpty()) {
            return Optional.empty();
        }
        List<Grading.Breakpoint> curve = new ArrayList<>();
        for (Node point : points) {
            if (point instanceof Node.ListNode pair && pair.items().size() == 2) {
                Optional<Double> x = Quantities.read(
                        pair.items().get(0).shown(), scale.get().dimension(), point.place(), diagnostics);
                Optional<Double> y = MapReader.number(pair.items().get(1), diagnostics);
                if (x.isPresent() && y.isPresent()) {
                    curve.add(new Grading.Breakpoint(x.get(), y.get()));
                }
            } else {
                diagnostics.add(
                        Message.GRADING_SHAPE, point.place(), point.shown(), "a breakpoint is [\"value\", points]");
            }
        }
        for (int i = 1; i < curve.size(); i++) {
            if (curve.get(i).si() <= curve.get(i - 1).si()) {
                diagnostics.add(Message.GRADING_SHAPE, node.place(), "", "breakpoints rise");
            }
        }
        if (curve.size() < 2) {
            diagnostics.add(Message.GRADING_SHAPE, node.place(), "", "a curve has at least two breakpoints");
            return Optional.empty();
        }
        return Optional.of(new Grading.Figure(
                scale.get().field(), scale.get().line(), scale.get().dimension(), List.copyOf(curve)));
    }

    /** What the curve is over, still without points; empty after an error. */
    private Optional<Grading.Figure> scale(Node node, String of) {
        if (of.startsWith(LINE)) {
            String id = of.substring(LINE.length());
            Optional<FigureKind> kind =
                    LineSizer.KINDS.stream().filter(k -> k.id().equals(id)).findFirst();
            if (kind.isEmpty()) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        node.place(),
                        of,
                        "figure of a line",
                        Similar.advice(
                                id, LineSizer.KINDS.stream().map(FigureKind::id).toList()));
            }
            return kind.map(k -> new Grading.Figure(Optional.empty(), id, k.dimension(), List.of()));
        }
        FactType process = types.type(FactTypes.PROCESS).orElseThrow();
        Optional<Field> field = process.field(of);
        if (field.isEmpty() || !(field.get().type() instanceof FieldType.NumberType number)) {
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    node.place(),
                    of,
                    "number property of a process, its medium or its technique",
                    Similar.advice(of, process.fields().keySet()));
            return Optional.empty();
        }
        return Optional.of(new Grading.Figure(field, "", number.dimension(), List.of()));
    }
}

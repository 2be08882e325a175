package org.washwright.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.TaskReader;

/** Reads {@value #FILE}. */
public final class GridPlanReader {

    /** Name of the file in an edition. */
    public static final String FILE = "grid.yaml";

    private final Edition edition;
    private final Diagnostics diagnostics;

    private GridPlanReader(Edition edition, Diagnostics diagnostics) {
        this.edition = edition;
        this.diagnostics = diagnostics;
    }

    /** Reads the file; empty after an error. */
    public static Optional<GridPlan> read(Node node, Edition edition, Diagnostics diagnostics) {
        return new GridPlanReader(edition, diagnostics).plan(node);
    }

    private Optional<GridPlan> plan(Node node) {
        int before = diagnostics.all().size();
        MapReader file = MapReader.of(node, FILE, diagnostics);
        List<GridPlan.Axis> axes = new ArrayList<>();
        for (Node item : file.list("axes")) {
            axis(item).ifPresent(axes::add);
        }
        CleaningTask base =
                file.get("base").flatMap(this::task).orElse(new CleaningTask("nothing known", "", Map.of(), Map.of()));
        file.noMore();
        if (axes.size() < 2 || axes.size() > GridPlan.MOST_AXES) {
            diagnostics.add(Message.GRID_SHAPE, node.place(), axes.size() + " axes", "two to four axes are shown");
        }
        if (axes.stream().map(GridPlan.Axis::group).distinct().count() < axes.size()) {
            diagnostics.add(Message.GRID_SHAPE, node.place(), "", "each axis needs a group of its own");
        }
        long cells = axes.stream()
                .mapToLong(a -> GridPlan.stops(a, edition).size())
                .reduce(1, (a, b) -> Math.min(a * b, Integer.MAX_VALUE));
        if (cells > GridPlan.MOST_CELLS) {
            diagnostics.add(Message.TOO_LARGE, node.place(), cells + " cells", GridPlan.MOST_CELLS + " cells");
        }
        return diagnostics.all().size() > before ? Optional.empty() : Optional.of(new GridPlan(axes, base));
    }

    private Optional<CleaningTask> task(Node node) {
        Diagnostics own = new Diagnostics();
        Optional<CleaningTask> task = TaskReader.read(node, edition, own);
        diagnostics.addAll(own);
        return task;
    }

    private Optional<GridPlan.Axis> axis(Node node) {
        MapReader map = MapReader.of(node, "an axis", diagnostics);
        String name = map.required("attribute");
        Optional<Node> groupBy = map.get("groupBy");
        boolean orNone = map.flag("orNone");
        map.noMore();
        int dot = name.indexOf('.');
        Optional<Group> group = Group.byFactType(dot < 0 ? name : name.substring(0, dot));
        Optional<Attribute> attribute = group.flatMap(g -> g.attribute(name.substring(dot + 1)))
                .filter(a -> !a.computed() && a.type() instanceof FieldType.TermType t && !t.isFlag());
        if (attribute.isEmpty()) {
            if (!name.isEmpty()) {
                Place place = map.get("attribute").map(Node::place).orElse(map.place());
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE, place, name, "attribute whose values are terms", known(name));
            }
            return Optional.empty();
        }
        GridPlan.Axis axis = new GridPlan.Axis(group.get(), attribute.get(), groupBy.map(Node::shown), orNone);
        if (orNone && !group.get().isList()) {
            diagnostics.add(Message.GRID_SHAPE, map.place(), "orNone", "only a list can be empty");
        }
        return groupBy.isEmpty() || isKnown(axis, groupBy.get()) ? Optional.of(axis) : Optional.empty();
    }

    private boolean isKnown(GridPlan.Axis axis, Node node) {
        Kind kind = edition.catalogue().kinds().get(axis.kind());
        Map<String, Property> properties = kind == null ? Map.of() : kind.properties();
        Property property = properties.get(node.shown());
        if (property != null && property.type() instanceof FieldType.TermType) {
            return true;
        }
        diagnostics.add(
                Message.UNKNOWN_REFERENCE,
                node.place(),
                node.shown(),
                "property of " + axis.kind() + " whose values are terms",
                Similar.advice(node.shown(), properties.keySet()));
        return false;
    }

    private static Object known(String name) {
        List<String> all = new ArrayList<>();
        Arrays.stream(Group.values())
                .forEach(g -> g.attributes().stream()
                        .filter(a -> !a.computed() && a.type() instanceof FieldType.TermType)
                        .forEach(a -> all.add(g.factType() + "." + a.name())));
        return Similar.advice(name, all);
    }
}

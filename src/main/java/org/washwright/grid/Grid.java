package org.washwright.grid;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.line.ProcessLine;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * A grid: for each combination of stops the number of processes of each status. A stop that stands for several terms leaves
 * open which of them it is, so that what is counted as recommended is so for each of them.
 *
 * @param axes its axes
 * @param stops stops of each axis
 * @param cells all cells, the last axis running fastest
 */
public record Grid(List<GridPlan.Axis> axes, List<List<GridPlan.Stop>> stops, List<Cell> cells) {

    /**
     * A cell.
     *
     * @param at place on each axis, from 0
     * @param recommended ids of processes that stand
     * @param conditional ids of processes that hang on what is not known
     * @param ruledOut number of processes that are out
     * @param refused true when the combination contradicts itself and was not answered
     */
    public record Cell(
            List<Integer> at, List<String> recommended, List<String> conditional, int ruledOut, boolean refused) {

        /** Keeps copies. */
        public Cell {
            at = List.copyOf(at);
            recommended = List.copyOf(recommended);
            conditional = List.copyOf(conditional);
        }
    }

    /** Keeps copies. */
    public Grid {
        axes = List.copyOf(axes);
        stops = stops.stream().map(List::copyOf).toList();
        cells = List.copyOf(cells);
    }

    /**
     * Computes a grid on all cores.
     *
     * @param stops the stops of each axis to compute: all, as {@link GridPlan#stops}, or some
     */
    public static Grid of(GridPlan plan, List<List<GridPlan.Stop>> stops, Assessor assessor, String asOf) {
        int count = stops.stream().mapToInt(List::size).reduce(1, (a, b) -> a * b);
        List<Cell> cells = IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> {
                    List<Integer> at = at(i, stops);
                    return cell(at, task(plan, stops, at), assessor, asOf);
                })
                .toList();
        return new Grid(plan.axes(), stops, cells);
    }

    private static List<Integer> at(int index, List<List<GridPlan.Stop>> stops) {
        List<Integer> at = new ArrayList<>();
        int rest = index;
        for (int i = stops.size() - 1; i >= 0; i--) {
            at.add(0, rest % stops.get(i).size());
            rest /= stops.get(i).size();
        }
        return at;
    }

    /** The task of a cell. */
    public static CleaningTask task(GridPlan plan, List<List<GridPlan.Stop>> stops, List<Integer> at) {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        lists.putAll(plan.base().lists());
        List<String> words = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            GridPlan.Axis axis = plan.axes().get(i);
            GridPlan.Stop stop = stops.get(i).get(at.get(i));
            words.add(axis.label() + ": " + stop.label());
            lists.put(axis.group(), entries(axis, stop, plan.base()));
        }
        return new CleaningTask(
                String.join(", ", words),
                plan.base().notes(),
                lists,
                plan.base().declared());
    }

    private static CleaningTask.Entries entries(GridPlan.Axis axis, GridPlan.Stop stop, CleaningTask base) {
        if (stop.terms().isEmpty()) {
            return new CleaningTask.Entries(List.of(), false);
        }
        // What the plan says of the group besides holds of the cell's entry too.
        Map<String, Given> given = new TreeMap<>(base.single(axis.group()).given());
        String pointer = "/" + axis.group().key() + (axis.group().isList() ? "/0/" : "/")
                + axis.attribute().name();
        given.put(axis.attribute().name(), Given.of(Value.oneOf(stop.terms()), pointer));
        return new CleaningTask.Entries(List.of(new Entry(given)), false);
    }

    private static Cell cell(List<Integer> at, CleaningTask task, Assessor assessor, String asOf) {
        Outcome outcome;
        try {
            outcome = assessor.outcome(task, Wishes.on(asOf));
        } catch (RefusedTask e) {
            return new Cell(at, List.of(), List.of(), 0, true);
        }
        List<String> recommended = with(outcome, ProcessLine.Status.RECOMMENDED);
        List<String> conditional = with(outcome, ProcessLine.Status.CONDITIONAL);
        return new Cell(
                at, recommended, conditional, outcome.lines().size() - recommended.size() - conditional.size(), false);
    }

    private static List<String> with(Outcome outcome, ProcessLine.Status status) {
        return outcome.lines().stream()
                .filter(l -> l.status() == status)
                .map(l -> l.process().id())
                .toList();
    }

    /** The cell at places on the axes. */
    public Cell at(List<Integer> at) {
        int index = 0;
        for (int i = 0; i < at.size(); i++) {
            index = index * stops.get(i).size() + at.get(i);
        }
        return cells.get(index);
    }

    /** As plain data for programs. */
    public Map<String, Object> asData() {
        Map<String, Object> out = new TreeMap<>();
        out.put("axes", axes.stream().map(GridPlan.Axis::name).toList());
        out.put(
                "stops",
                stops.stream()
                        .map(list -> list.stream()
                                .map(s -> Map.of("id", s.id(), "label", s.label(), "terms", s.terms()))
                                .toList())
                        .toList());
        out.put(
                "cells",
                cells.stream()
                        .map(c -> Map.of(
                                "at", ids(c),
                                "recommended", c.recommended(),
                                "conditional", c.conditional(),
                                "ruledOut", c.ruledOut(),
                                "refused", c.refused()))
                        .toList());
        return out;
    }

    /** Ids of a cell's stops. */
    public List<String> ids(Cell cell) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < cell.at().size(); i++) {
            out.add(stops.get(i).get(cell.at().get(i)).id());
        }
        return out;
    }
}

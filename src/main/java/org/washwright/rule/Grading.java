package org.washwright.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.quantity.Dimension;

/**
 * How findings and figures become points.
 *
 * @param steps points that a support or oppose of strength 1, 2 or 3 moves a criterion
 * @param areas the five areas in order
 */
public record Grading(Map<Integer, Double> steps, List<Area> areas) {

    /** Ids of the five areas, in order. */
    public static final List<String> AREAS =
            List.of("technology", "quality", "health-and-safety", "environment", "cost");

    /** One of the five areas. */
    public record Area(String id, String name, double weight, List<Criterion> criteria) {}

    /**
     * What is judged within an area.
     *
     * @param id unique over all areas
     * @param name what a reader calls it
     * @param weight within its area
     * @param start points before any finding, 0 to 100
     * @param figure property that sets the start instead
     */
    public record Criterion(String id, String name, double weight, double start, Optional<Figure> figure) {}

    /**
     * A curve from a figure to points.
     *
     * @param field field of the fact type Process; empty for a figure of the line
     * @param line id of a figure of the line as a whole; empty for a property of the process
     * @param dimension what the figure measures
     * @param curve breakpoints, by rising value
     */
    public record Figure(Optional<Field> field, String line, Dimension dimension, List<Breakpoint> curve) {}

    /** A value in SI and the points it is worth. */
    public record Breakpoint(double si, double points) {}

    /** Keeps copies. */
    public Grading {
        steps = java.util.Collections.unmodifiableMap(new TreeMap<>(steps));
        areas = List.copyOf(areas);
    }

    /** The criterion with this id. */
    public Optional<Criterion> criterion(String id) {
        return areas.stream()
                .flatMap(a -> a.criteria().stream())
                .filter(c -> c.id().equals(id))
                .findFirst();
    }

    /** Points of a value by straight lines between breakpoints; beyond the ends the last points hold. */
    public static double points(Figure figure, double si) {
        List<Breakpoint> curve = figure.curve();
        if (si <= curve.get(0).si()) {
            return curve.get(0).points();
        }
        for (int i = 1; i < curve.size(); i++) {
            Breakpoint a = curve.get(i - 1);
            Breakpoint b = curve.get(i);
            if (si <= b.si()) {
                return a.points() + (b.points() - a.points()) * ((si - a.si()) / (b.si() - a.si()));
            }
        }
        return curve.get(curve.size() - 1).points();
    }
}

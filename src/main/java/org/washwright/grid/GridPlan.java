package org.washwright.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.catalogue.Term;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * What a grid is made over.
 *
 * @param axes its axes: rows, columns, then the ones that a reader picks a value of
 * @param base what is known of every task of the grid
 */
public record GridPlan(List<Axis> axes, CleaningTask base) {

    /** Axes of a table: rows and columns. */
    public static final int TABLE = 2;

    /** Most axes. */
    public static final int MOST_AXES = 4;

    /** Most cells. */
    public static final int MOST_CELLS = 200_000;

    /**
     * An axis.
     *
     * @param group group of the attribute
     * @param attribute a term attribute
     * @param groupBy property whose values make the groups; empty when every term stands alone
     * @param orNone true when the list may also be empty
     */
    public record Axis(Group group, Attribute attribute, Optional<String> groupBy, boolean orNone) {

        /** As written in {@code grid.yaml}: {@code Soil.kind}. */
        public String name() {
            return group.factType() + "." + attribute.name();
        }

        /** What a reader calls it. */
        public String label() {
            return attribute.label();
        }

        String kind() {
            return ((FieldType.TermType) attribute.type()).kind();
        }
    }

    /**
     * A place on an axis.
     *
     * @param id id of the term, of the value of the property, or {@code none}
     * @param label what a reader calls it
     * @param terms the terms it stands for; none when the list is empty
     */
    public record Stop(String id, String label, List<String> terms) {

        /** Id of the stop of an empty list. */
        public static final String NONE = "none";

        /** Keeps a copy. */
        public Stop {
            terms = List.copyOf(terms);
        }
    }

    /** Keeps a copy. */
    public GridPlan {
        axes = List.copyOf(axes);
    }

    /** All stops of every axis. */
    public List<List<Stop>> stops(Edition edition) {
        return axes.stream().map(a -> stops(a, edition)).toList();
    }

    /**
     * The stops of every axis, but of those named only the one named.
     *
     * @param at what to look at, such as {@code Feature.kind=blind-hole}
     * @param diagnostics takes what names no axis or no stop
     */
    public List<List<Stop>> stops(Edition edition, List<String> at, Diagnostics diagnostics) {
        List<List<Stop>> out = new ArrayList<>(stops(edition));
        List<String> names = axes.stream().map(Axis::name).toList();
        for (String one : at) {
            Place place = Place.ofFile("at");
            int equals = one.indexOf('=');
            String name = equals < 0 ? one : one.substring(0, equals);
            int axis = names.indexOf(name);
            if (axis < 0) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE, place, name, "axis of this grid", Similar.advice(name, names));
                continue;
            }
            String id = one.substring(equals + 1);
            List<Stop> only =
                    out.get(axis).stream().filter(s -> s.id().equals(id)).toList();
            if (only.isEmpty()) {
                List<String> ids = out.get(axis).stream().map(Stop::id).toList();
                diagnostics.add(Message.UNKNOWN_REFERENCE, place, id, "stop of " + name, Similar.advice(id, ids));
                continue;
            }
            out.set(axis, only);
        }
        return List.copyOf(out);
    }

    /** All stops of the first two axes, and of each further one only the one at the place picked, from 0. */
    public List<List<Stop>> sheet(Edition edition, List<Integer> picked) {
        List<List<Stop>> out = new ArrayList<>(stops(edition));
        for (int i = TABLE; i < out.size(); i++) {
            out.set(
                    i,
                    List.of(out.get(i).get(picked(picked, i - TABLE, out.get(i).size()))));
        }
        return List.copyOf(out);
    }

    private static int picked(List<Integer> picked, int i, int size) {
        return i < picked.size() ? Math.max(0, Math.min(picked.get(i), size - 1)) : 0;
    }

    /** The stops of an axis in order of their ids, the empty list first. */
    public static List<Stop> stops(Axis axis, Edition edition) {
        List<Stop> out = new ArrayList<>();
        if (axis.orNone()) {
            out.add(new Stop(Stop.NONE, "none", List.of()));
        }
        List<Term> terms = edition.catalogue().ofKind(axis.kind()).values().stream()
                .filter(t -> !t.isWithdrawn())
                .toList();
        if (axis.groupBy().isEmpty()) {
            terms.forEach(t -> out.add(new Stop(t.id(), t.name(), List.of(t.id()))));
            return out;
        }
        String property = axis.groupBy().get();
        TreeSet<String> values = new TreeSet<>();
        terms.forEach(t -> values.addAll(values(t, property)));
        FieldType type = edition.catalogue()
                .kinds()
                .get(axis.kind())
                .properties()
                .get(property)
                .type();
        String kind = ((FieldType.TermType) type).kind();
        for (String value : values) {
            out.add(new Stop(
                    value,
                    edition.catalogue().name(kind, value),
                    terms.stream()
                            .filter(t -> values(t, property).contains(value))
                            .map(Term::id)
                            .toList()));
        }
        List<String> rest = terms.stream()
                .filter(t -> values(t, property).isEmpty())
                .map(Term::id)
                .toList();
        if (!rest.isEmpty()) {
            out.add(new Stop("other", "other", rest));
        }
        return out;
    }

    private static List<String> values(Term term, String property) {
        return term.property(property) instanceof Value.OneOf o ? List.copyOf(o.terms()) : List.of();
    }
}

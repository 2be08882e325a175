package org.washwright.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.catalogue.Term;
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

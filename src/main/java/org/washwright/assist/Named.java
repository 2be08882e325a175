package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;

/** Proposes names that are bound above. */
final class Named {

    private static final String VARIABLE = "variable";

    private Named() {}

    /** Bound fields, and fields of bound facts, that hold just this. */
    static List<Proposal> of(FieldType type, List<Bound> bounds) {
        List<Proposal> out = new ArrayList<>();
        for (Bound b : bounds) {
            if (b.name().isEmpty()) {
                continue;
            }
            if (b.field().isPresent()) {
                if (b.field().get().type().equals(type)) {
                    out.add(Proposal.of(
                            b.name(), b.name(), VARIABLE, b.field().get().label(), "Bound above."));
                }
                continue;
            }
            for (Field f : b.type().fields().values()) {
                if (f.type().equals(type)) {
                    String path = b.name() + "." + f.name();
                    out.add(Proposal.of(path, path, VARIABLE, f.label(), "Of the fact that is bound above."));
                }
            }
        }
        return out;
    }

    /** Facts of a type. */
    static List<Proposal> facts(String type, List<Bound> bounds) {
        return bounds.stream()
                .filter(b -> b.isFactOf(type) && !b.name().isEmpty())
                .map(b -> Proposal.of(b.name(), b.name(), VARIABLE, type, "The fact that is bound above."))
                .toList();
    }

    /** Places for values in a reason. */
    static List<Proposal> placeholders(List<Bound> bounds, boolean target, String close) {
        List<Proposal> out = new ArrayList<>();
        if (target) {
            out.add(place("$target", "name of each target", close));
        }
        for (Bound b : bounds) {
            if (b.name().isEmpty()) {
                continue;
            }
            out.add(place(
                    b.name(),
                    b.field().map(Field::label).orElse("name of the " + b.type().name()),
                    close));
            if (b.field().isEmpty()) {
                b.type().fields().values().stream()
                        .filter(f -> !(f.type() instanceof FieldType.FactType))
                        .forEach(f -> out.add(place(b.name() + "." + f.name(), f.label(), close)));
            }
        }
        return out;
    }

    private static Proposal place(String path, String name, String close) {
        return Proposal.of(path, path + close, "value", name, "The value takes this place in the sentence.");
    }
}

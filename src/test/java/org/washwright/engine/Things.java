package org.washwright.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Span;
import org.washwright.rule.FactType;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Facts of a type that holds whatever a test puts into it. */
final class Things {

    static final FactType TYPE = type();
    static final Field NUMBER = TYPE.field("number").orElseThrow();
    static final Field TERM = TYPE.field("term").orElseThrow();
    static final Field OTHER = TYPE.field("other").orElseThrow();

    private Things() {}

    private static FactType type() {
        Map<String, Field> fields = new LinkedHashMap<>();
        fields.put("number", new Field("number", "number", FieldType.number(Dimension.RATIO), 0));
        fields.put("term", new Field("term", "term", FieldType.term("soil"), 1));
        fields.put("other", new Field("other", "other", new FieldType.FactType(), 2));
        return new FactType("Thing", fields, 9);
    }

    static Fact fact(String id, boolean sure, Value number, Value term, Value other) {
        return new Fact(
                id, TYPE, id, sure, List.of(number, term, other), List.of(Origin.NONE, Origin.NONE, Origin.NONE));
    }

    static Fact number(Value number) {
        return fact("a", true, number, Value.UNKNOWN, Value.UNKNOWN);
    }

    static Fact term(Value term) {
        return fact("a", true, Value.UNKNOWN, term, Value.UNKNOWN);
    }

    static Value span(double low, double high) {
        return new Value.Number(new Span(low, high));
    }

    static Value all(String... terms) {
        return new Value.AllOf(new TreeSet<>(List.of(terms)));
    }

    /** Every set of these that is not empty. */
    static List<TreeSet<String>> sets(List<String> of) {
        List<TreeSet<String>> out = new ArrayList<>();
        for (int bits = 1; bits < 1 << of.size(); bits++) {
            TreeSet<String> set = new TreeSet<>();
            for (int i = 0; i < of.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    set.add(of.get(i));
                }
            }
            out.add(set);
        }
        return out;
    }
}

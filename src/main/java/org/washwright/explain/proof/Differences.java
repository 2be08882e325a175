package org.washwright.explain.proof;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;

/** Finds where two JSON documents differ, place by place; a list that is longer differs where it goes on. */
final class Differences {

    private final List<Place> found = new ArrayList<>();

    /** A place where they differ; what one does not hold is a missing node. */
    record Place(String pointer, JsonNode stated, JsonNode derived) {}

    private Differences() {}

    static List<Place> of(JsonNode stated, JsonNode derived) {
        Differences differences = new Differences();
        differences.compare("", stated, derived);
        return differences.found;
    }

    private void compare(String at, JsonNode stated, JsonNode derived) {
        if (stated.isObject() && derived.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            stated.fieldNames().forEachRemaining(names::add);
            derived.fieldNames().forEachRemaining(names::add);
            names.forEach(
                    n -> compare(at + "/" + n.replace("~", "~0").replace("/", "~1"), stated.path(n), derived.path(n)));
        } else if (stated.isArray() && derived.isArray()) {
            lists(at, stated, derived);
        } else if (!same(stated, derived)) {
            found.add(new Place(at, stated, derived));
        }
    }

    /** Lists side by side; one thing too many or too few is named alone and does not shift all that follow it. */
    private void lists(String at, JsonNode stated, JsonNode derived) {
        int start = 0;
        int least = Math.min(stated.size(), derived.size());
        while (start < least && stated.get(start).equals(derived.get(start))) {
            start++;
        }
        int end = 0;
        Function<Integer, JsonNode> lastStated = i -> stated.get(stated.size() - 1 - i);
        Function<Integer, JsonNode> lastDerived = i -> derived.get(derived.size() - 1 - i);
        while (end < least - start && lastStated.apply(end).equals(lastDerived.apply(end))) {
            end++;
        }
        int both = least - start - end;
        for (int i = start; i < start + both; i++) {
            compare(at + "/" + i, stated.get(i), derived.get(i));
        }
        for (int i = start + both; i < stated.size() - end; i++) {
            found.add(new Place(at + "/" + i, stated.get(i), derived.path(Integer.MAX_VALUE)));
        }
        for (int i = start + both; i < derived.size() - end; i++) {
            found.add(new Place(at + "/" + i, stated.path(Integer.MAX_VALUE), derived.get(i)));
        }
    }

    /** Numbers by their value: 1 and 1.0 are written alike in the end. */
    private static boolean same(JsonNode a, JsonNode b) {
        return a.isNumber() && b.isNumber() ? a.doubleValue() == b.doubleValue() : a.equals(b);
    }
}

package org.washwright.explain.why;

import java.util.Arrays;
import java.util.List;

/** A JSON pointer (RFC 6901) into an answer, step by step. */
record Pointer(String text, List<String> steps) {

    static Pointer of(String text) {
        if (!text.isEmpty() && !text.startsWith("/")) {
            throw new NothingThere(text);
        }
        return new Pointer(
                text,
                text.isEmpty()
                        ? List.of()
                        : Arrays.stream(text.substring(1).split("/", -1))
                                .map(s -> s.replace("~1", "/").replace("~0", "~"))
                                .toList());
    }

    int size() {
        return steps.size();
    }

    /** A step by its place; empty beyond the last. */
    String step(int i) {
        return i < steps.size() ? steps.get(i) : "";
    }

    /** True when the steps read like this; {@code #} stands for a place in a list. */
    boolean is(String... shape) {
        if (shape.length != steps.size()) {
            return false;
        }
        for (int i = 0; i < shape.length; i++) {
            boolean fits = shape[i].equals("#") ? steps.get(i).matches("[0-9]{1,6}") : shape[i].equals(steps.get(i));
            if (!fits) {
                return false;
            }
        }
        return true;
    }

    /** The thing of a list that a step points to. */
    <T> T in(List<T> list, int step) {
        int place = Integer.parseInt(steps.get(step));
        if (place >= list.size()) {
            throw new NothingThere(text);
        }
        return list.get(place);
    }
}

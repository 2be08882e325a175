package org.washwright.explain.replay;

import java.util.List;

/**
 * A run of steps of one kind, so that hundreds remain walkable.
 *
 * @param title what happens in it
 * @param from position of its first step, from 1
 * @param count number of steps
 * @param parts runs within it: firings of one rule, or what is about one process
 */
public record Chapter(String title, int from, int count, List<Part> parts) {

    /** A run of steps within a chapter. */
    public record Part(String title, int from, int count) {

        /** True when this step is within. */
        public boolean holds(int step) {
            return step >= from && step < from + count;
        }
    }

    /** Keeps a copy. */
    public Chapter {
        parts = List.copyOf(parts);
    }

    /** True when this step is within. */
    public boolean holds(int step) {
        return step >= from && step < from + count;
    }
}

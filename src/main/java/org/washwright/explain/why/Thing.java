package org.washwright.explain.why;

import java.util.List;

/**
 * One thing in an explanation.
 *
 * @param id what it is, without numbers of firings, places in lists or points: the same thing has the same id in another
 *     answer, so that two explanations can be compared
 * @param kind what kind of thing
 * @param text what it says, in words
 * @param detail where that comes from, in words; may be empty
 * @param at JSON pointer of the thing in the answer, by which its own reasons can be asked for
 * @param on JSON pointers of what it rests on, the most telling first
 */
public record Thing(String id, Kind kind, String text, String detail, String at, List<String> on) {

    /** Keeps a copy without repeats. */
    public Thing {
        on = on.stream().distinct().toList();
    }
}

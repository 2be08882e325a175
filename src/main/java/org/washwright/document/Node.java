package org.washwright.document;

import java.util.List;
import java.util.Optional;

/** A value of a YAML or JSON document with its place. */
public sealed interface Node {

    /** Where the value stands. */
    Place place();

    /** A map in the order of the text; keys are unique. */
    record MapNode(Place place, List<Entry> entries) implements Node {

        /** The value under a key. */
        public Optional<Node> get(String key) {
            return entries.stream()
                    .filter(e -> e.key().equals(key))
                    .map(Entry::value)
                    .findFirst();
        }
    }

    /** One key of a map, its place and its value. */
    record Entry(String key, Place keyPlace, Node value) {}

    /** A list. */
    record ListNode(Place place, List<Node> items) implements Node {}

    /**
     * A single value as text.
     *
     * @param quoted true when it stood in quotes, so that {@code "yes"} can be told from {@code yes}
     */
    record ScalarNode(Place place, String text, boolean quoted) implements Node {}

    /** What kind of value this is, in words. */
    default String describe() {
        if (this instanceof MapNode) {
            return "a map";
        }
        return this instanceof ListNode ? "a list" : "a single value";
    }

    /** The value as it may be shown in a message. */
    default String shown() {
        return this instanceof ScalarNode s ? s.text() : describe();
    }
}

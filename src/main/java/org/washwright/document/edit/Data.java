package org.washwright.document.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.Node;

/** What a document says, without places, quotes and comments: the measure of whether a change did what was meant. */
public sealed interface Data {

    /** A single value as text. */
    record One(String text) implements Data {}

    /** A list. */
    record Many(List<Data> items) implements Data {
        /** Keeps a copy. */
        public Many {
            items = List.copyOf(items);
        }
    }

    /** A map in the order of the text. */
    record Named(Map<String, Data> entries) implements Data {
        /** Keeps a copy in the same order. */
        public Named {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        /** Keys in order. */
        public List<String> keys() {
            return List.copyOf(entries.keySet());
        }

        /** Two maps say the same only in the same order. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Named named && keys().equals(named.keys()) && entries.equals(named.entries);
        }

        @Override
        public int hashCode() {
            return entries.hashCode();
        }
    }

    /** A single value. */
    static Data one(String text) {
        return new One(text);
    }

    /** A list of single values. */
    static Data texts(List<String> texts) {
        return new Many(texts.stream().map(Data::one).toList());
    }

    /** What a value that was read says. */
    static Data of(Node node) {
        if (node instanceof Node.MapNode map) {
            Map<String, Data> entries = new LinkedHashMap<>();
            map.entries().forEach(e -> entries.put(e.key(), of(e.value())));
            return new Named(entries);
        }
        return node instanceof Node.ListNode list
                ? new Many(list.items().stream().map(Data::of).toList())
                : new One(((Node.ScalarNode) node).text());
    }

    /** The value at a pointer (RFC 6901) below this one. */
    default Optional<Data> at(String pointer) {
        Optional<Data> here = Optional.of(this);
        for (String step : Pointers.steps(pointer)) {
            here = here.flatMap(d -> d.member(step));
        }
        return here;
    }

    private Optional<Data> member(String step) {
        if (this instanceof Named named) {
            return Optional.ofNullable(named.entries().get(step));
        }
        int at = Pointers.index(step);
        return this instanceof Many many && at >= 0 && at < many.items().size()
                ? Optional.of(many.items().get(at))
                : Optional.empty();
    }

    /** A single value's text; empty for anything else. */
    default String text() {
        return this instanceof One one ? one.text() : "";
    }

    /** The single values of a list; a single value is a list of one. */
    default List<String> texts() {
        if (this instanceof Many many) {
            List<String> out = new ArrayList<>();
            many.items().forEach(item -> out.add(item.text()));
            return out;
        }
        return this instanceof One one && !one.text().isEmpty() ? List.of(one.text()) : List.of();
    }
}

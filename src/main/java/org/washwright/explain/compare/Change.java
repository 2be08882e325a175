package org.washwright.explain.compare;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;

/**
 * One change of a task: where, and what is to stand there.
 *
 * <p>Places, as JSON pointers in a task's usual form:
 *
 * <ul>
 *   <li>{@code /part/mass}: an attribute of a group; {@code /attributes/ID}: one that the edition declares
 *   <li>{@code /soils/0/kind}: an attribute of an entry, counted from 0; the number after the last adds one
 *   <li>{@code /soils/0}: its first attribute in short form, or {@code remove} to take the entry out. Entries keep their numbers
 *       until all else is set
 *   <li>{@code /soils/open}: {@code yes} when there may be more than those listed
 *   <li>{@code /soils}: {@code none} when there are none, {@code unknown} when nothing is known of them
 *   <li>{@code /intended}: {@code remove} to say nothing of a group that is no list, {@code unknown}
 * </ul>
 *
 * @param pointer where
 * @param value what is to stand there, written as in a task file
 */
public record Change(String pointer, Node value) {

    /** Takes an entry, or what is said of a group, out. */
    public static final String REMOVE = "remove";

    /**
     * Reads {@code POINTER=VALUE}; a value in square brackets is one of several terms, separated by commas.
     *
     * @param place where it was given; empty after an error
     */
    public static Optional<Change> parse(String text, Place place, Diagnostics diagnostics) {
        int equals = text.indexOf('=');
        if (equals < 1) {
            diagnostics.add(Message.CHANGE_SHAPE, place, text);
            return Optional.empty();
        }
        return Optional.of(of(text.substring(0, equals).strip(), text.substring(equals + 1), place));
    }

    /** A change whose value is given as one would type it. */
    public static Change of(String pointer, String value, Place place) {
        String text = value.strip();
        Place here = new Place(place.file(), place.line(), place.column(), pointer);
        if (!text.startsWith("[") || !text.endsWith("]") || text.length() < 2) {
            return new Change(pointer, new Node.ScalarNode(here, text, false));
        }
        List<Node> terms = Arrays.stream(text.substring(1, text.length() - 1).split(",", -1))
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .<Node>map(t -> new Node.ScalarNode(here, t, false))
                .toList();
        return new Change(pointer, new Node.ListNode(here, terms));
    }

    /** The change as it would be typed. */
    public String text() {
        return pointer + "=" + typed();
    }

    /** The value as it would be typed. */
    public String typed() {
        return value instanceof Node.ListNode list
                ? "[" + String.join(", ", list.items().stream().map(Node::shown).toList()) + "]"
                : value.shown();
    }

    /** The word that stands there; empty when it is no single value. */
    String word() {
        return value instanceof Node.ScalarNode s ? s.text().strip() : "";
    }
}

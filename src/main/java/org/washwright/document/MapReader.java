package org.washwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;
import org.washwright.document.Node.ScalarNode;

/** Reads a map key by key, reporting what is missing, of the wrong shape or not known. */
public final class MapReader {

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,59}");

    private final MapNode map;
    private final String what;
    private final Diagnostics diagnostics;
    private final List<String> known = new ArrayList<>();

    private MapReader(MapNode map, String what, Diagnostics diagnostics) {
        this.map = map;
        this.what = what;
        this.diagnostics = diagnostics;
    }

    /**
     * A reader of this map; an empty map after an error.
     *
     * @param what names the map in messages, for instance "a term"
     */
    public static MapReader of(Node node, String what, Diagnostics diagnostics) {
        if (node instanceof MapNode map) {
            return new MapReader(map, what, diagnostics);
        }
        diagnostics.add(Message.EXPECTED_MAP, node.place(), node.shown());
        return new MapReader(new MapNode(node.place(), List.of()), what, diagnostics);
    }

    /** Where the map stands. */
    public Place place() {
        return map.place();
    }

    /** The value under a key. */
    public Optional<Node> get(String key) {
        if (!known.contains(key)) {
            known.add(key);
        }
        return map.get(key);
    }

    /** A text; empty text when missing. */
    public String text(String key) {
        return get(key).map(n -> scalar(n).map(ScalarNode::text).orElse("")).orElse("");
    }

    /** A text that must be there and not be blank. */
    public String required(String key) {
        String text = text(key);
        if (text.isBlank()) {
            diagnostics.add(Message.MISSING_FIELD, map.get(key).map(Node::place).orElse(map.place()), "", what, key);
        }
        return text.strip();
    }

    /** An id that must be there. */
    public String id(String key) {
        String id = required(key);
        if (!id.isEmpty() && !ID.matcher(id).matches()) {
            diagnostics.add(Message.BAD_ID, map.get(key).map(Node::place).orElse(map.place()), id);
        }
        return id;
    }

    /** A flag; false when missing. */
    public boolean flag(String key) {
        Optional<Node> node = get(key);
        if (node.isEmpty()) {
            return false;
        }
        String text = node.get().shown();
        boolean yes = text.equals("yes") || text.equals("true");
        if (!yes && !text.equals("no") && !text.equals("false")) {
            diagnostics.add(Message.NOT_A_FLAG, node.get().place(), text);
        }
        return yes;
    }

    /** A plain number; {@code missing} when missing or after an error. */
    public double number(String key, double missing) {
        Optional<Node> node = get(key);
        return node.isEmpty() ? missing : number(node.get(), diagnostics).orElse(missing);
    }

    /** A plain number. */
    public static Optional<Double> number(Node node, Diagnostics diagnostics) {
        String text = node.shown();
        if (text.matches("-?[0-9]{1,12}(\\.[0-9]{1,12})?")) {
            return Optional.of(Double.parseDouble(text));
        }
        diagnostics.add(Message.NOT_A_NUMBER, node.place(), text);
        return Optional.empty();
    }

    /** A list; empty when missing. */
    public List<Node> list(String key) {
        Optional<Node> node = get(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof ListNode list) {
            return list.items();
        }
        diagnostics.add(Message.EXPECTED_LIST, node.get().place(), node.get().shown());
        return List.of();
    }

    /** A list of texts. */
    public List<String> texts(String key) {
        return list(key).stream()
                .map(this::scalar)
                .flatMap(Optional::stream)
                .map(ScalarNode::text)
                .toList();
    }

    /** The entries of a map under a key; empty when missing. */
    public List<Node.Entry> entries(String key) {
        Optional<Node> node = get(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof MapNode inner) {
            return inner.entries();
        }
        diagnostics.add(Message.EXPECTED_MAP, node.get().place(), node.get().shown());
        return List.of();
    }

    /** Reports every key that was not asked for. */
    public void noMore() {
        map.entries().stream()
                .filter(e -> !known.contains(e.key()))
                .forEach(e -> diagnostics.add(
                        Message.UNKNOWN_FIELD, e.keyPlace(), e.key(), what, Similar.advice(e.key(), known)));
    }

    private Optional<ScalarNode> scalar(Node node) {
        if (node instanceof ScalarNode s) {
            return Optional.of(s);
        }
        diagnostics.add(Message.EXPECTED_TEXT, node.place(), node.shown());
        return Optional.empty();
    }
}

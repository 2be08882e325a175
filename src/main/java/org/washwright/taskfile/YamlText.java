package org.washwright.taskfile;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.regex.Pattern;
import org.washwright.document.Node;

/** Writes a document as YAML that people like to read: one value a line, quotes only where they are needed. */
final class YamlText {

    /** What needs no quotes. */
    private static final Pattern BARE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ._/()²³µ°%·^+-]*(?<! )");

    private static final Pattern NOTHING = Pattern.compile("(?i)null|~");

    private final StringBuilder out = new StringBuilder();

    private YamlText() {}

    static String of(Node document) {
        YamlText text = new YamlText();
        text.block(document, "");
        return text.out.toString();
    }

    private void block(Node node, String indent) {
        if (node instanceof Node.MapNode map && !map.entries().isEmpty()) {
            for (Node.Entry entry : map.entries()) {
                out.append(indent).append(scalar(entry.key())).append(':');
                below(entry.value(), indent);
            }
        } else if (node instanceof Node.ListNode list && !list.items().isEmpty()) {
            for (Node item : list.items()) {
                out.append(indent).append('-');
                item(item, indent);
            }
        }
    }

    private void below(Node value, String indent) {
        if (isSimple(value)) {
            out.append(' ').append(simple(value)).append('\n');
        } else {
            out.append('\n');
            block(value, indent + "  ");
        }
    }

    /** The first value of an entry stands behind its dash. */
    private void item(Node item, String indent) {
        if (isSimple(item)) {
            out.append(' ').append(simple(item)).append('\n');
            return;
        }
        int start = out.length();
        block(item, indent + "  ");
        out.replace(start, start + indent.length() + 2, " ");
    }

    /** A single value, nothing at all, or a short list of single values. */
    private static boolean isSimple(Node node) {
        if (node instanceof Node.MapNode map) {
            return map.entries().isEmpty();
        }
        return !(node instanceof Node.ListNode list)
                || list.items().stream().allMatch(Node.ScalarNode.class::isInstance);
    }

    private static String simple(Node node) {
        if (node instanceof Node.MapNode) {
            return "{}";
        }
        if (node instanceof Node.ListNode list) {
            return "["
                    + String.join(
                            ", ",
                            list.items().stream().map(i -> scalar(i.shown())).toList())
                    + "]";
        }
        return scalar(node.shown());
    }

    static String scalar(String text) {
        return BARE.matcher(text).matches() && !NOTHING.matcher(text).matches()
                ? text
                : '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }
}

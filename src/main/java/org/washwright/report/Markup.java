package org.washwright.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.UnaryOperator;

/**
 * Writes well-formed XHTML that a browser reads as HTML too. Text and values of attributes are escaped here and nowhere
 * else; there is no way to write markup as text.
 */
final class Markup {

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private final UnaryOperator<String> glyphs;

    /**
     * An empty document.
     *
     * @param glyphs puts signs that the medium can draw for those it can't
     */
    Markup(UnaryOperator<String> glyphs) {
        this.glyphs = glyphs;
    }

    /** Opens an element; attributes come as names and values in turn. */
    Markup open(String tag, String... attributes) {
        begin(tag, attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /** Closes what was opened last. */
    Markup close() {
        out.append("</").append(open.pop()).append('>');
        if (open.size() < 4) {
            out.append('\n');
        }
        return this;
    }

    /** An element that can hold nothing. */
    Markup empty(String tag, String... attributes) {
        begin(tag, attributes);
        out.append(" />");
        return this;
    }

    /** An element that holds text alone. */
    Markup element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close();
    }

    /** Text. */
    Markup text(String text) {
        out.append(escaped(glyphs.apply(SafeText.of(text))));
        return this;
    }

    /** A style sheet of ours, for media that take it only from inside. */
    Markup style(String css) {
        if (css.contains("<") || css.contains("&")) {
            throw new IllegalArgumentException("a style sheet that would have to be escaped");
        }
        out.append("<style>").append(css).append("</style>");
        return this;
    }

    /** The finished document. */
    String finish() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }

    private void begin(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(SafeText.of(attributes[i + 1])))
                    .append('"');
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("\r", "&#13;");
    }
}

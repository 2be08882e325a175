package org.washwright.assist;

import java.util.List;

/**
 * What a word means.
 *
 * @param from offset of its first character
 * @param to offset behind its last
 * @param title the word as a reader calls it
 * @param kind what sort of thing it is
 * @param lines what is to be said of it, most important first
 */
public record Help(int from, int to, String title, String kind, List<String> lines) {

    /** Keeps what is not empty. */
    public Help {
        lines = lines.stream().filter(l -> !l.isBlank()).toList();
    }

    Help at(int start, int end) {
        return new Help(start, end, title, kind, lines);
    }

    static Help of(String title, String kind, List<String> lines) {
        return new Help(0, 0, title, kind, lines);
    }

    /** The whole as running text, for whoever listens. */
    public String words() {
        return title + ", " + kind + (lines.isEmpty() ? "." : ". " + String.join(" ", lines));
    }
}

package org.washwright.assist;

import java.util.Optional;

/**
 * What of a text a proposal takes the place of.
 *
 * @param from offset where it starts
 * @param to offset where it ends
 * @param quoted true when it lies within quotes
 * @param close true when the quote behind it is missing
 * @param typed what is written of it so far
 */
record Range(int from, int to, boolean quoted, boolean close, String typed) {

    /** Signs that no word, quantity or citation holds: what has them belongs to what follows a quote left open. */
    private static final String FOREIGN = "=<>(){}\"";

    /** The range at a caret, {@code word} being the one that it stands in. */
    static Range at(String text, int caret, Optional<Token> word) {
        if (word.isEmpty()) {
            return new Range(caret, caret, false, false, "");
        }
        Token current = word.get();
        if (current.kind() != Token.Kind.TEXT) {
            return new Range(current.start(), current.end(), false, false, text.substring(current.start(), caret));
        }
        int from = current.start() + 1;
        int end = current.closed() ? current.end() - 1 : current.end();
        String rest = text.substring(Math.min(caret, end), end);
        boolean whole = current.closed() && rest.chars().noneMatch(c -> FOREIGN.indexOf(c) >= 0);
        return new Range(
                from, whole ? end : Math.max(from, caret), true, !whole, text.substring(from, Math.max(from, caret)));
    }

    /** A word in quotes, as far as they are missing. */
    String quote(String word) {
        return quoted ? word + (close ? "\"" : "") : "\"" + word + "\"";
    }
}

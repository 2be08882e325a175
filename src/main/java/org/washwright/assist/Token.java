package org.washwright.assist;

/**
 * A word or sign of rule text that may be broken.
 *
 * @param kind what it is
 * @param start offset of its first character
 * @param end offset behind its last
 * @param text as written; of a text in quotes without the quotes
 * @param closed false for a text in quotes or a comment without an end
 * @param firstOnLine true when nothing but blanks stands before it on its line
 */
record Token(Kind kind, int start, int end, String text, boolean closed, boolean firstOnLine) {

    enum Kind {
        /** A word, a variable, or several joined by dots. */
        WORD,
        TEXT,
        NUMBER,
        SIGN,
        ANNOTATION,
        COMMENT
    }

    boolean isSign(String sign) {
        return kind == Kind.SIGN && text.equals(sign);
    }

    boolean isWord(String word) {
        return kind == Kind.WORD && text.equals(word);
    }

    boolean isVariable() {
        return kind == Kind.WORD && text.startsWith("$");
    }

    /** Whether the caret stands in it, or right behind it where more letters would belong to it. */
    boolean holds(int caret) {
        if (start >= caret || caret > end) {
            return false;
        }
        return switch (kind) {
            case WORD, NUMBER, ANNOTATION -> true;
            case TEXT, COMMENT -> !closed || caret < end;
            // The first half of an operator.
            case SIGN -> text.equals("=") || text.equals("!");
        };
    }
}

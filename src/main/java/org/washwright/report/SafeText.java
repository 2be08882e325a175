package org.washwright.report;

/**
 * Text as it may stand in XML: what XML can't hold, and what turns the direction of writing, is shown by its number instead
 * of being dropped, so that nothing is lost and nothing can hide.
 */
final class SafeText {

    private SafeText() {}

    /** The text with every such sign as {@code [U+0007]}. */
    static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (mayStand(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(named(c));
            }
        });
        return out.toString();
    }

    /** A sign by its number. */
    static String named(int codePoint) {
        return String.format("[U+%04X]", codePoint);
    }

    private static boolean mayStand(int c) {
        boolean space = c == '\t' || c == '\n' || c == '\r';
        boolean control = c < ' ' && !space || c >= 0x7F && c < 0xA0;
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        boolean noSign = (c & 0xFFFE) == 0xFFFE;
        return !control && !half && !noSign && !turns(c);
    }

    /** Marks and overrides of direction (Unicode Standard Annex 9), which could make a text read as another. */
    private static boolean turns(int c) {
        return c == 0x061C || c == 0x200E || c == 0x200F || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }
}

package org.washwright.document;

import java.util.Locale;
import java.util.Optional;

/**
 * Characters that a reader of a text can't see, so that it says something else to a program than to a person: control
 * characters, halves of characters, changes of direction, joiners and spaces without width (Unicode Technical Standard 55).
 */
public final class HiddenCharacters {

    private HiddenCharacters() {}

    /** Refuses rule text or a table that holds one; true when it holds none. */
    public static boolean none(String file, String text, Diagnostics diagnostics) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int c = text.codePointAt(i);
            boolean lineEnd = c == '\n' || (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n');
            if (!lineEnd && c != '\t' && (isHidden(c) || isFormat(c))) {
                refuse(new SourceText(file, text).at(i), c, diagnostics);
                return false;
            }
        }
        return true;
    }

    /**
     * Refuses words of a document that hold one; true when they hold none. What scripts other than Latin need to be written
     * (joiners, marks of direction) may stand in words.
     */
    static boolean none(Place place, String words, Diagnostics diagnostics) {
        for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) {
            int c = words.codePointAt(i);
            if (c != '\n' && c != '\r' && c != '\t' && isHidden(c)) {
                refuse(place, c, diagnostics);
                return false;
            }
        }
        return true;
    }

    /** A key that holds none, not even a line's end; else empty, because keys stand in the place of every message. */
    static String key(String key, Place place, Diagnostics diagnostics) {
        Optional<Integer> hidden =
                key.codePoints().filter(c -> isHidden(c)).boxed().findFirst();
        hidden.ifPresent(c -> refuse(place, c, diagnostics));
        return hidden.isPresent() ? "" : key;
    }

    private static void refuse(Place place, int c, Diagnostics diagnostics) {
        diagnostics.add(Message.HIDDEN_CHARACTER, place, String.format(Locale.ROOT, "U+%04X", c));
    }

    private static boolean isHidden(int c) {
        boolean turnsText = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return turnsText || Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE;
    }

    private static boolean isFormat(int c) {
        int type = Character.getType(c);
        return type == Character.FORMAT || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
    }
}

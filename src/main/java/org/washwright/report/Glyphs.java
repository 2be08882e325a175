package org.washwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * What the bundled fonts can draw. A sign that none of them has would come out as an empty box or not at all; it is put
 * as one that means the same or by its number.
 */
final class Glyphs {

    private static final Pattern TOGETHER =
            Pattern.compile("(?<=\\d)[\u2009\u202F](?=\\d)|(?<=\\d) (?=[%\u00B0\u20AC])");

    private static final String RAISED = "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";
    private static final Pattern POWER = Pattern.compile("[\u207F" + RAISED + "]*\u207B[\u207F" + RAISED + "]*");

    private final List<CmapLookup> fonts;

    private Glyphs(List<CmapLookup> fonts) {
        this.fonts = fonts;
    }

    /** The glyphs of the bundled fonts. */
    static Glyphs bundled() {
        return new Glyphs(Fonts.ALL.stream().map(Glyphs::lookup).toList());
    }

    /** The text in signs that can be drawn. */
    String drawable(String text) {
        StringBuilder out = new StringBuilder(text.length());
        // A number must not be torn apart, nor from the sign after it, at the end of a line.
        POWER.matcher(TOGETHER.matcher(text).replaceAll("\u00A0"))
                .replaceAll(Glyphs::power)
                .codePoints()
                .forEach(c -> out.append(drawable(c)));
        return out.toString();
    }

    /** True when a font has the sign. */
    boolean has(int codePoint) {
        return fonts.stream().anyMatch(f -> f.getGlyphId(codePoint) > 0);
    }

    private String drawable(int c) {
        return switch (c) {
            case '\n', '\t', '\r' -> Character.toString(c);
            // The sign of micro and the Greek letter look the same; the fonts have the letter.
            case 0x00B5 -> "\u03BC";
            case 0x2010, 0x2011 -> "-";
            case 0x2004, 0x2005, 0x2006, 0x2007, 0x2008, 0x200A, 0x202F -> "\u00A0";
            case 0x2103 -> "\u00B0C";
            // Places where a word may be broken, which have no shape.
            case 0x00AD, 0x200B, 0x2060, 0xFEFF -> "";
            default -> has(c) ? Character.toString(c) : SafeText.named(c);
        };
    }

    /** Neither font has the raised minus, so such a power is written out: 10^&minus;6, R^(n&minus;1). */
    private static String power(MatchResult found) {
        StringBuilder plain = new StringBuilder();
        found.group().chars().forEach(c -> {
            int digit = RAISED.indexOf(c);
            plain.append(digit >= 0 ? (char) ('0' + digit) : c == '\u207F' ? 'n' : '\u2212');
        });
        return plain.lastIndexOf("\u2212") > 0 ? "^(" + plain + ")" : "^" + plain;
    }

    private static CmapLookup lookup(Fonts.Face face) {
        try {
            return Fonts.parsed(face).getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException("a bundled font", e);
        }
    }
}

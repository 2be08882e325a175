package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as pages show them: {@code {figures:three(x)}}, {@code {figures:points(x)}}. */
@TemplateExtension(namespace = "figures")
public final class Figures {

    static final char THIN_SPACE = '\u2009';
    static final char MINUS = '\u2212';
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);

    private Figures() {}

    /** Three significant figures, thin space in thousands, never an exponent. */
    public static String three(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a number that can be shown: " + value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(THREE);
        String plain =
                rounded.signum() == 0 ? "0" : rounded.abs().stripTrailingZeros().toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String rest = point < 0 ? "" : plain.substring(point);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0) {
                text.append(THIN_SPACE);
            }
            text.append(whole.charAt(i));
        }
        return (rounded.signum() < 0 ? String.valueOf(MINUS) : "") + text + rest;
    }

    /** Points from 0 to 100 as a whole number. */
    public static String points(double value) {
        return three(Math.floor(value + 0.5));
    }

    /** One number, or both ends of a range with a dash, as a table shows it. */
    public static String span(double low, double high) {
        return joined(low, high, "\u2013");
    }

    /** One number, or {@code 68 to 79}, as it is read out. */
    public static String spanInWords(double low, double high) {
        return joined(low, high, " to ");
    }

    /** Points with their sign: {@code +20}, {@code −10}. */
    public static String signed(double value) {
        String text = points(Math.abs(value));
        return text.equals("0") ? text : (value < 0 ? MINUS : '+') + text;
    }

    /** The first eight characters of a hash: enough to tell two editions apart by eye. */
    public static String shortHash(String hash) {
        return hash.length() <= 8 ? hash : hash.substring(0, 8);
    }

    private static String joined(double low, double high, String by) {
        String from = points(low);
        String to = points(high);
        return from.equals(to) ? from : from + by + to;
    }
}

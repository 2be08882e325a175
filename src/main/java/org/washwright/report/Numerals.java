package org.washwright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as the report shows them: three significant figures, thin space in thousands, never an exponent. */
final class Numerals {

    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
    private static final int HASH_SHOWN = 12;

    private Numerals() {}

    /** Three significant figures. */
    static String three(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(THREE);
        String plain =
                rounded.signum() == 0 ? "0" : rounded.abs().stripTrailingZeros().toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        StringBuilder text = new StringBuilder(rounded.signum() < 0 ? "\u2212" : "");
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0) {
                text.append('\u2009');
            }
            text.append(whole.charAt(i));
        }
        return text.append(point < 0 ? "" : plain.substring(point)).toString();
    }

    /** The same with its unit, if it has one. */
    static String three(double value, String unit) {
        return unit.isEmpty() ? three(value) : three(value) + " " + unit;
    }

    /** Points as whole numbers, both ends when they differ. */
    static String points(double low, double high) {
        String a = whole(low);
        String b = whole(high);
        return a.equals(b) ? a : a + " to " + b;
    }

    /** A share from 0 to 1 in percent. */
    static String percent(double share) {
        return whole(share * 100) + " %";
    }

    /** The first digits of a hash, enough to tell answers apart at sight. */
    static String shortHash(String hash) {
        return hash.substring(0, Math.min(HASH_SHOWN, hash.length()));
    }

    /** A length in a drawing, to a hundredth. */
    static String length(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String whole(double value) {
        return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}

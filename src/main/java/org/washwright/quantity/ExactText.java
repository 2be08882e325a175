package org.washwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;

/** Writes quantities so that reading them gives the same number to the last bit, with as few digits as that takes. */
public final class ExactText {

    private static final int FEWEST = 3;

    /** Digits that tell any two doubles apart, and two more for the way through a unit. */
    private static final int MOST = 19;

    private ExactText() {}

    /** A span as it may be typed: {@code 31 HRC}, {@code 30..40 HRC}, {@code >= 31 HRC} or {@code <= 20 mg/m2}. */
    public static String of(Span span, Dimension dimension) {
        if (span.isPoint()) {
            return of(span.low(), dimension);
        }
        if (Double.isInfinite(span.high())) {
            return ">= " + of(span.low(), dimension);
        }
        if (span.low() == Quantities.lowest(dimension)) {
            return "<= " + of(span.high(), dimension);
        }
        String low = of(span.low(), dimension);
        String unit = dimension.defaultUnit();
        String amount = unit.isEmpty() ? low : low.substring(0, low.length() - unit.length() - 1);
        return amount + ".." + of(span.high(), dimension);
    }

    /** A number in SI as it may be typed. */
    public static String of(double si, Dimension dimension) {
        if (dimension == Dimension.DATE) {
            return Dates.write(si);
        }
        BigDecimal amount = new BigDecimal(Quantities.fromSi(si, dimension.defaultUnit(), dimension));
        String text = "";
        for (int digits = FEWEST; digits <= MOST; digits++) {
            text = text(amount.round(new MathContext(digits)), dimension);
            if (reads(text, dimension, si)) {
                return text;
            }
        }
        return text;
    }

    private static String text(BigDecimal amount, Dimension dimension) {
        BigDecimal plain = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
        boolean handy = plain.precision() - plain.scale() <= 12 && plain.scale() <= 12;
        String number = handy ? plain.toPlainString() : plain.toString().replace("E", "e");
        return dimension.defaultUnit().isEmpty() ? number : number + " " + dimension.defaultUnit();
    }

    private static boolean reads(String text, Dimension dimension, double si) {
        return Quantities.read(text, dimension, Place.ofFile("-"), new Diagnostics())
                .filter(read -> read == si)
                .isPresent();
    }
}

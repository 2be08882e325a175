package org.washwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** Reads quantities and ranges of quantities from text, and writes them for readers. */
public final class Quantities {

    private static final String NUMBER =
            "[+\u2212-]?(?:[0-9][0-9\\u2009\\u202f\\u00a0]{0,24}(?:\\.[0-9]{1,20})?|\\.[0-9]{1,20})(?:[eE][+-]?[0-9]{1,3})?";
    private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final Pattern PAIR =
            Pattern.compile("(" + NUMBER + ")\\s*([^.]*?)\\s*(?:\\.\\.|\\bto\\b|–)\\s*(.*)");
    private static final Pattern DATES = Pattern.compile("(.{10})\\s*(?:\\.\\.|\\bto\\b|–)\\s*(.{10})");
    private static final int LONGEST = 80;
    private static final char THIN_SPACE = '\u2009';

    private Quantities() {}

    /** One quantity as SI; empty when it can't be read, with the reason in {@code diagnostics}. */
    public static Optional<Double> read(String text, Dimension dimension, Place place, Diagnostics diagnostics) {
        return amount(text.strip(), dimension, place, diagnostics);
    }

    /** A quantity, a range ({@code 30..40 HRC}, {@code 30 to 40 HRC}) or a half-open range ({@code <= 20 mg/m2}). */
    public static Optional<Span> readSpan(String text, Dimension dimension, Place place, Diagnostics diagnostics) {
        String t = text.strip();
        if (t.length() > LONGEST) {
            diagnostics.add(Message.BAD_QUANTITY, place, t, dimension.example());
            return Optional.empty();
        }
        if (t.startsWith(">=") || t.startsWith("≥")) {
            return amount(t.substring(t.startsWith("≥") ? 1 : 2).strip(), dimension, place, diagnostics)
                    .map(v -> new Span(v, Double.POSITIVE_INFINITY));
        }
        if (t.startsWith("<=") || t.startsWith("≤")) {
            return amount(t.substring(t.startsWith("≤") ? 1 : 2).strip(), dimension, place, diagnostics)
                    .map(v -> new Span(lowest(dimension), v));
        }
        Matcher pair = (dimension == Dimension.DATE ? DATES : PAIR).matcher(t);
        if (!pair.matches()) {
            return amount(t, dimension, place, diagnostics).map(Span::of);
        }
        if (dimension == Dimension.DATE) {
            return span(t, pair.group(1), pair.group(2), dimension, place, diagnostics);
        }
        Matcher second = QUANTITY.matcher(pair.group(3));
        String unit = pair.group(2).isEmpty() && second.matches() ? second.group(2) : pair.group(2);
        return span(t, (pair.group(1) + " " + unit).strip(), pair.group(3).strip(), dimension, place, diagnostics);
    }

    private static Optional<Span> span(
            String t, String from, String to, Dimension dimension, Place place, Diagnostics diagnostics) {
        Optional<Double> low = amount(from, dimension, place, diagnostics);
        Optional<Double> high = low.isEmpty() ? low : amount(to, dimension, place, diagnostics);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.get() > high.get()) {
            diagnostics.add(Message.RANGE_REVERSED, place, t);
            return Optional.empty();
        }
        return Optional.of(new Span(low.get(), high.get()));
    }

    /** True when text is a number and a unit of this dimension. */
    public static boolean isUnitOf(String unit, Dimension dimension) {
        return Units.parse(unit).map(u -> u.fits(dimension)).orElse(false);
    }

    /** SI value of an amount in a unit known to fit. */
    public static double toSi(String amount, String unit, Dimension dimension) {
        return Units.parse(unit).orElseThrow().toSi(new BigDecimal(amount), dimension);
    }

    /** Amount in a unit known to fit. */
    public static double fromSi(double si, String unit, Dimension dimension) {
        return Double.isInfinite(si) ? si : Units.parse(unit).orElseThrow().fromSi(si, dimension);
    }

    /** A value in the unit a reader expects, with at most {@code digits} significant figures and thin spaces in thousands. */
    public static String write(double si, Dimension dimension, int digits) {
        return write(si, dimension, readable(dimension, si), digits);
    }

    /** The default unit, but larger ones for times, masses and areas that are long numbers in it. */
    private static String readable(Dimension dimension, double largest) {
        if (Double.isInfinite(largest)) {
            return dimension.defaultUnit();
        }
        return switch (dimension) {
            case TIME -> largest < 2 * 60 ? "s" : largest < 2 * 3600 ? "min" : "h";
            case MASS -> largest < 10 ? "g" : "kg";
            case AREA -> largest < 1 ? "cm²" : "m²";
            default -> dimension.defaultUnit();
        };
    }

    private static String write(double si, Dimension dimension, String unit, int digits) {
        if (dimension == Dimension.DATE) {
            return Dates.write(si);
        }
        String number = number(written(si, unit, dimension), digits);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** Zero degrees are not exactly zero after the way to kelvin and back. */
    private static double written(double si, String unit, Dimension dimension) {
        double amount = fromSi(si, unit, dimension);
        return dimension == Dimension.TEMPERATURE && Math.abs(amount) < 1e-9 ? 0 : amount;
    }

    /** A span in words, both ends in one unit. */
    public static String write(Span span, Dimension dimension, int digits) {
        if (span.isPoint()) {
            return write(span.low(), dimension, digits);
        }
        boolean noLow = Double.isInfinite(span.low()) || (span.low() == 0 && lowest(dimension) == 0);
        boolean noHigh = Double.isInfinite(span.high());
        if (noLow && noHigh) {
            return "any";
        }
        String unit = readable(dimension, noHigh ? span.low() : span.high());
        if (noHigh) {
            return "at least " + write(span.low(), dimension, unit, digits);
        }
        if (noLow) {
            return "at most " + write(span.high(), dimension, unit, digits);
        }
        String low = dimension == Dimension.DATE
                ? Dates.write(span.low())
                : number(fromSi(span.low(), unit, dimension), digits);
        return low + " to " + write(span.high(), dimension, unit, digits);
    }

    /** A number with at most {@code digits} significant figures and no trailing zeros. */
    public static String number(double value, int digits) {
        if (Double.isInfinite(value)) {
            return value > 0 ? "∞" : "−∞";
        }
        BigDecimal rounded = new BigDecimal(value).round(new java.math.MathContext(digits, RoundingMode.HALF_EVEN));
        BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        if (plain.precision() - plain.scale() > 15 || plain.scale() > 12) {
            return plain.toString().replace("E+", "e").replace("E", "e");
        }
        String text = plain.abs().toPlainString();
        int point = text.indexOf('.');
        StringBuilder whole = new StringBuilder(point < 0 ? text : text.substring(0, point));
        if (whole.length() > 4) {
            for (int i = whole.length() - 3; i > 0; i -= 3) {
                whole.insert(i, THIN_SPACE);
            }
        }
        return (plain.signum() < 0 ? "−" : "") + whole + (point < 0 ? "" : text.substring(point));
    }

    /** The lowest value a quantity of this dimension can have: zero, but for temperatures and the scales. */
    public static double lowest(Dimension dimension) {
        return switch (dimension) {
            case TEMPERATURE, TEMPERATURE_DIFFERENCE, PH, ROCKWELL_C, MONEY, DATE -> Double.NEGATIVE_INFINITY;
            default -> 0;
        };
    }

    private static Optional<Double> amount(String text, Dimension dimension, Place place, Diagnostics diagnostics) {
        if (dimension == Dimension.DATE) {
            return Dates.read(text, place, diagnostics);
        }
        if (text.indexOf(',') >= 0) {
            diagnostics.add(Message.DECIMAL_COMMA, place, text);
            return Optional.empty();
        }
        Matcher matcher = QUANTITY.matcher(text);
        if (text.length() > LONGEST || !matcher.matches()) {
            diagnostics.add(Message.BAD_QUANTITY, place, text, dimension.example());
            return Optional.empty();
        }
        String unitText = matcher.group(2);
        if (unitText.isEmpty() && !dimension.isPlain()) {
            diagnostics.add(Message.MISSING_UNIT, place, text, dimension.example());
            return Optional.empty();
        }
        Optional<Unit> unit = Units.parse(unitText);
        if (unit.isEmpty()) {
            diagnostics.add(Message.UNKNOWN_UNIT, place, text, unitText, dimension.example());
            return Optional.empty();
        }
        if (!unit.get().fits(dimension)) {
            diagnostics.add(Message.WRONG_DIMENSION, place, text, dimension.label(), dimension.example());
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(
                matcher.group(1).replaceAll("[\\u2009\\u202f\\u00a0]", "").replace('\u2212', '-'));
        double si = unit.get().toSi(number, dimension);
        if (!Double.isFinite(si) || si < lowest(dimension) || Math.abs(si) > 1e30) {
            diagnostics.add(Message.OUT_OF_RANGE, place, text, "what a " + dimension.label() + " can be");
            return Optional.empty();
        }
        if (dimension == Dimension.TEMPERATURE && si < 0) {
            diagnostics.add(Message.OUT_OF_RANGE, place, text, "what a temperature can be");
            return Optional.empty();
        }
        return Optional.of(si + 0.0);
    }
}

package org.washwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads unit expressions: symbols with SI prefixes or from the list below, joined by {@code /}, {@code ·}, {@code *} or a blank, with
 * exponents written {@code 2}, {@code ²} or {@code ^2}, and whole numbers as factors ({@code mg/1000 cm2}).
 *
 * <p>Factors of the inch, pound, gallon and degree Fahrenheit: NIST Special Publication 811 (2008), appendix B (exact
 * values, from memory).
 */
final class Units {

    private static final int LONGEST = 40;
    private static final Pattern FACTOR = Pattern.compile("([1-9][0-9]{0,5})|([^0-9/*^]+)(?:\\^?(-?[1-9]))?");
    private static final Map<String, Unit> SYMBOLS = new HashMap<>();
    private static final BigDecimal ZERO = BigDecimal.ZERO;

    private Units() {}

    static {
        define("m", "1", 1, 0, 0, 0, 0, 0);
        define("g", "1/1000", 0, 1, 0, 0, 0, 0);
        define("s", "1", 0, 0, 1, 0, 0, 0);
        define("K", "1", 0, 0, 0, 1, 0, 0);
        define("A", "1", 0, 0, 0, 0, 1, 0);
        define("Hz", "1", 0, 0, -1, 0, 0, 0);
        define("Pa", "1", -1, 1, -2, 0, 0, 0);
        define("N", "1", 1, 1, -2, 0, 0, 0);
        define("J", "1", 2, 1, -2, 0, 0, 0);
        define("W", "1", 2, 1, -3, 0, 0, 0);
        define("Wh", "3600", 2, 1, -2, 0, 0, 0);
        define("S", "1", -2, -1, 3, 0, 2, 0);
        define("L", "1/1000", 3, 0, 0, 0, 0, 0);
        define("bar", "100000", -1, 1, -2, 0, 0, 0);
        for (String base : new String[] {"m", "g", "s", "A", "Hz", "Pa", "N", "J", "W", "Wh", "S", "L", "bar"}) {
            prefix(base, "k", "1000");
            prefix(base, "M", "1000000");
            prefix(base, "m", "1/1000");
            prefix(base, "µ", "1/1000000");
            prefix(base, "u", "1/1000000");
            prefix(base, "n", "1/1000000000");
            prefix(base, "c", "1/100");
            prefix(base, "d", "1/10");
            prefix(base, "h", "100");
            prefix(base, "G", "1000000000");
        }
        alias("l", "L");
        alias("ml", "mL");
        alias("sec", "s");
        define("min", "60", 0, 0, 1, 0, 0, 0);
        define("h", "3600", 0, 0, 1, 0, 0, 0);
        define("hour", "3600", 0, 0, 1, 0, 0, 0);
        define("hours", "3600", 0, 0, 1, 0, 0, 0);
        define("d", "86400", 0, 0, 1, 0, 0, 0);
        define("day", "86400", 0, 0, 1, 0, 0, 0);
        define("days", "86400", 0, 0, 1, 0, 0, 0);
        define("week", "604800", 0, 0, 1, 0, 0, 0);
        define("year", "31536000", 0, 0, 1, 0, 0, 0);
        define("t", "1000", 0, 1, 0, 0, 0, 0);
        define("in", "254/10000", 1, 0, 0, 0, 0, 0);
        define("ft", "3048/10000", 1, 0, 0, 0, 0, 0);
        define("lb", "45359237/100000000", 0, 1, 0, 0, 0, 0);
        define("oz", "28349523125/1000000000000", 0, 1, 0, 0, 0, 0);
        define("gal", "3785411784/1000000000000", 3, 0, 0, 0, 0, 0);
        define("psi", "44482216152605/6451600000", -1, 1, -2, 0, 0, 0);
        define("ksi", "44482216152605/6451600", -1, 1, -2, 0, 0, 0);
        define("atm", "101325", -1, 1, -2, 0, 0, 0);
        define("€", "1", 0, 0, 0, 0, 0, 1);
        define("EUR", "1", 0, 0, 0, 0, 0, 1);
        define("%", "1/100", 0, 0, 0, 0, 0, 0);
        define("ppm", "1/1000000", 0, 0, 0, 0, 0, 0);
        define("part", "1", 0, 0, 0, 0, 0, 0);
        define("parts", "1", 0, 0, 0, 0, 0, 0);
        temperature("°C", "1", new BigDecimal("273.15"));
        alias("degC", "°C");
        alias("℃", "°C");
        SYMBOLS.put(
                "°F", new Unit("°F", BigInteger.valueOf(5), BigInteger.valueOf(9), fahrenheitOffset(), kelvin(), null));
        alias("degF", "°F");
        scale("HRC", Dimension.ROCKWELL_C);
        scale("HV", Dimension.VICKERS);
        scale("pH", Dimension.PH);
        scale("g/mol", Dimension.MOLAR_MASS, "1/1000");
        scale("kg/mol", Dimension.MOLAR_MASS, "1");
        scale("kg/kmol", Dimension.MOLAR_MASS, "1/1000");
        scale("MPa^0.5", Dimension.SOLUBILITY_PARAMETER, "1000");
        scale("Pa^0.5", Dimension.SOLUBILITY_PARAMETER, "1");
        alias("MPa½", "MPa^0.5");
        // One degree of arc, to more digits than a double holds.
        scale("°", Dimension.ANGLE, "314159265358979323846264338328/18000000000000000000000000000000");
        alias("deg", "°");
        scale("rad", Dimension.ANGLE, "1");
    }

    /** The unit this expression means; empty when a symbol in it is not known. The empty expression is the number one. */
    static Optional<Unit> parse(String expression) {
        String text = expression.strip();
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        if (text.isEmpty()) {
            return Optional.of(one());
        }
        Unit known = SYMBOLS.get(text);
        return known != null ? Optional.of(known) : compound(normalise(text), expression);
    }

    private static Optional<Unit> compound(String text, String original) {
        BigInteger numerator = BigInteger.ONE;
        BigInteger denominator = BigInteger.ONE;
        int[] exponents = new int[6];
        boolean below = false;
        int at = 0;
        while (at < text.length()) {
            Matcher matcher = FACTOR.matcher(text).region(at, text.length());
            if (!matcher.lookingAt()) {
                return Optional.empty();
            }
            int power = matcher.group(3) == null ? 1 : Integer.parseInt(matcher.group(3));
            Unit unit = matcher.group(1) != null ? number(matcher.group(1)) : SYMBOLS.get(matcher.group(2));
            if (unit == null || unit.scale() != null || unit.offset().signum() != 0) {
                return Optional.empty();
            }
            int signed = below ? -power : power;
            BigInteger up = signed > 0 ? unit.numerator() : unit.denominator();
            BigInteger down = signed > 0 ? unit.denominator() : unit.numerator();
            numerator = numerator.multiply(up.pow(Math.abs(signed)));
            denominator = denominator.multiply(down.pow(Math.abs(signed)));
            for (int i = 0; i < exponents.length; i++) {
                exponents[i] += signed * unit.exponents()[i];
            }
            at = matcher.end();
            if (at < text.length()) {
                char joint = text.charAt(at++);
                if (joint == '/') {
                    below = true;
                } else if (joint != '*') {
                    return Optional.empty();
                }
                if (at == text.length()) {
                    return Optional.empty();
                }
            }
        }
        BigInteger gcd = numerator.gcd(denominator);
        return numerator.signum() == 0
                ? Optional.empty()
                : Optional.of(new Unit(
                        original.strip(), numerator.divide(gcd), denominator.divide(gcd), ZERO, exponents, null));
    }

    private static String normalise(String text) {
        return text.replaceAll("(?<=[\\p{L}0-9²³½°%)]) +(?=[\\p{L}°%€])", "*")
                .replace("²", "2")
                .replace("³", "3")
                .replace("⁻¹", "-1")
                .replace("·", "*")
                .replace(" ", "")
                .replace("(", "")
                .replace(")", "");
    }

    private static Unit one() {
        return new Unit("", BigInteger.ONE, BigInteger.ONE, ZERO, new int[6], null);
    }

    private static Unit number(String digits) {
        return new Unit(digits, new BigInteger(digits), BigInteger.ONE, ZERO, new int[6], null);
    }

    private static void define(String symbol, String factor, int... exponents) {
        put(symbol, factor, exponents, null);
    }

    private static void prefix(String base, String prefix, String factor) {
        String[] parts = factor.split("/");
        BigInteger over = parts.length == 2 ? new BigInteger(parts[1]) : BigInteger.ONE;
        Unit unit = SYMBOLS.get(base);
        SYMBOLS.putIfAbsent(
                prefix + base,
                new Unit(
                        prefix + base,
                        unit.numerator().multiply(new BigInteger(parts[0])),
                        unit.denominator().multiply(over),
                        ZERO,
                        unit.exponents(),
                        null));
    }

    private static void alias(String alias, String symbol) {
        SYMBOLS.put(alias, SYMBOLS.get(symbol));
    }

    private static void temperature(String symbol, String factor, BigDecimal offset) {
        SYMBOLS.put(symbol, new Unit(symbol, new BigInteger(factor), BigInteger.ONE, offset, kelvin(), null));
    }

    private static BigDecimal fahrenheitOffset() {
        // T/K = (t/°F + 459.67) * 5/9, so the offset is 459.67 * 5/9.
        return new BigDecimal("459.67")
                .multiply(BigDecimal.valueOf(5))
                .divide(BigDecimal.valueOf(9), new java.math.MathContext(60));
    }

    private static int[] kelvin() {
        return new int[] {0, 0, 0, 1, 0, 0};
    }

    private static void scale(String symbol, Dimension dimension) {
        scale(symbol, dimension, "1");
    }

    private static void scale(String symbol, Dimension dimension, String factor) {
        put(symbol, factor, new int[6], dimension);
    }

    private static void put(String symbol, String factor, int[] exponents, Dimension scale) {
        String[] parts = factor.split("/");
        BigInteger over = parts.length == 2 ? new BigInteger(parts[1]) : BigInteger.ONE;
        SYMBOLS.put(symbol, new Unit(symbol, new BigInteger(parts[0]), over, ZERO, exponents, scale));
    }
}

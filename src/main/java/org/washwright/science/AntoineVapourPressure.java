package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Vapour pressure by the equation of Antoine (1888): {@code log10 p = A - B / (T + C)} or {@code ln p = A - B / (T + C)}, p in
 * Pa, T in K.
 *
 * <p>Constants belong to one substance, one form and one range; those of other units have to be converted first (bar: A + 5;
 * mmHg: A + 2.124903; °C: C - 273.15). Outside the range the value is given with a warning: a little below it is a few per
 * cent off, far above the boiling point it is guesswork. Source of each set of constants: with the set.
 *
 * @param form of the logarithm
 * @param a constant A
 * @param b constant B in K
 * @param c constant C in K
 * @param lowest lowest temperature of the fit in K
 * @param highest highest temperature of the fit in K
 */
public record AntoineVapourPressure(Form form, double a, double b, double c, double lowest, double highest) {

    /** Which logarithm the constants are for. */
    public enum Form {
        /** Decadic, as in most tables. */
        LOG10,
        /** Natural. */
        NATURAL
    }

    private static final double LN_10 = StrictMath.log(10);

    /**
     * Checks the constants.
     *
     * @throws RefusedInput when they describe no rising pressure over a range of temperature
     */
    public AntoineVapourPressure {
        Need.finite(a, "Antoine constant A", "");
        Need.positive(b, "Antoine constant B", "K");
        Need.finite(c, "Antoine constant C", "K");
        Need.positive(lowest, "lowest temperature of the fit", "K");
        if (!(highest > lowest) || Double.isInfinite(highest)) {
            throw Need.refused(
                    highest, "highest temperature of the fit", "K", "give one above the lowest, " + lowest + " K");
        }
        if (!(lowest + c > 0)) {
            throw Need.refused(
                    c,
                    "Antoine constant C",
                    "K",
                    "the equation has no value at the lowest temperature, " + lowest
                            + " K; C is usually from -10 to -100 K");
        }
    }

    /** Constants for {@code log10 p}. */
    public static AntoineVapourPressure log10(double a, double b, double c, double lowest, double highest) {
        return new AntoineVapourPressure(Form.LOG10, a, b, c, lowest, highest);
    }

    /** Constants for {@code ln p}. */
    public static AntoineVapourPressure natural(double a, double b, double c, double lowest, double highest) {
        return new AntoineVapourPressure(Form.NATURAL, a, b, c, lowest, highest);
    }

    /**
     * Vapour pressure in Pa at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero or at which the equation has no value
     */
    public Estimate pressure(double temperature) {
        Need.positive(temperature, "temperature", "K");
        if (!(temperature + c > 0)) {
            throw Need.refused(temperature, "temperature", "K", "these constants have no value below " + -c + " K");
        }
        double logarithm = a - b / (temperature + c);
        double pressure = StrictMath.exp(form == Form.LOG10 ? logarithm * LN_10 : logarithm);
        return checked(pressure, temperature);
    }

    /**
     * Temperature in K at which the liquid boils under a pressure in Pa.
     *
     * @throws RefusedInput for a pressure that is not above zero or that the equation never reaches
     */
    public Estimate boilingTemperature(double pressure) {
        Need.positive(pressure, "pressure", "Pa");
        double logarithm = StrictMath.log(pressure) / (form == Form.LOG10 ? LN_10 : 1);
        if (!(a - logarithm > 0) || !(b / (a - logarithm) - c > 0)) {
            throw Need.refused(pressure, "pressure", "Pa", "with these constants the liquid never has it");
        }
        double temperature = b / (a - logarithm) - c;
        return checked(temperature, temperature);
    }

    private Estimate checked(double value, double temperature) {
        return Need.within(
                Estimate.of(value), temperature, lowest, highest, Dimension.TEMPERATURE, "Antoine constants hold");
    }
}

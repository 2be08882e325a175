package org.washwright.science;

/**
 * Vapour pressure by the equation of Antoine: log10(p/Pa) = A − B / (T/K + C).
 *
 * <p>Source: C. Antoine, C. R. Acad. Sci. 107 (1888) 681; constants from Poling and others, The Properties of Gases and
 * Liquids, 5th ed. (2001), appendix A, or another set named where it is used. Outside the temperatures of the set the value is extrapolated and
 * says so.
 *
 * @param a constant A
 * @param b constant B, K
 * @param c constant C, K
 * @param from lowest temperature of the set, K
 * @param to highest temperature of the set, K
 */
public record AntoineVapourPressure(double a, double b, double c, double from, double to) {

    /** A set whose constants are written for ln p: ln(p/Pa) = A − B / (T/K + C). */
    public static AntoineVapourPressure natural(double a, double b, double c, double from, double to) {
        double ln10 = StrictMath.log(10);
        return new AntoineVapourPressure(a / ln10, b / ln10, c, from, to);
    }

    /** Vapour pressure, Pa, at a temperature, K. */
    public Estimate pressure(double kelvin) {
        Require.positive(kelvin + c, "temperature above the pole of the Antoine equation");
        return new Range("the Antoine constants hold", from, to).at(kelvin, StrictMath.pow(10, a - b / (kelvin + c)));
    }

    /** Boiling temperature, K, at a pressure, Pa. */
    public Estimate boiling(double pascal) {
        double kelvin = b / (a - StrictMath.log10(Require.positive(pascal, "pressure"))) - c;
        return new Range("the Antoine constants hold", from, to).at(kelvin, kelvin);
    }
}

package org.washwright.science;

/**
 * Vapour pressure of water by Wagner and Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783 and 31 (2002) 387, equation 2.5; the
 * saturation line of IAPWS SR1-86(1992). ln(p/pc) = (Tc/T) (−7.85951783 τ + 1.84408259 τ^1.5 − 11.7866497 τ³ + 22.6807411
 * τ^3.5 − 15.9618719 τ⁴ + 1.80122502 τ^7.5), τ = 1 − T/Tc, Tc = 647.096 K, pc = 22.064 MPa.
 */
public final class WaterVapourPressure {

    private static final double TC = 647.096;
    private static final double PC = 22.064e6;
    private static final double[] A = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] E = {1, 1.5, 3, 3.5, 4, 7.5};
    private static final Range RANGE = new Range("the vapour pressure of water is given", 273.16, TC);

    private WaterVapourPressure() {}

    /** Vapour pressure, Pa, at a temperature, K; the critical pressure above the critical point. */
    public static Estimate at(double kelvin) {
        double tau = Math.max(0, 1 - Require.positive(kelvin, "temperature") / TC);
        double sum = 0;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * StrictMath.pow(tau, E[i]);
        }
        return RANGE.at(kelvin, PC * StrictMath.exp(TC / kelvin * sum));
    }
}

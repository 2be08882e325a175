package org.washwright.science;

/**
 * Surface tension of water against its vapour, IAPWS R1-76(2014): σ = 235.8 mN/m τ^1.256 (1 − 0.625 τ), τ = 1 − T / 647.096 K;
 * from the triple point to the critical point.
 */
public final class WaterSurfaceTension {

    private static final double CRITICAL = 647.096;
    private static final Range RANGE = new Range("the surface tension of water is given", 273.16, CRITICAL);

    private WaterSurfaceTension() {}

    /** Surface tension, N/m, at a temperature, K; zero above the critical point. */
    public static Estimate at(double kelvin) {
        double tau = Math.max(0, 1 - Require.positive(kelvin, "temperature") / CRITICAL);
        return RANGE.at(kelvin, 0.2358 * StrictMath.pow(tau, 1.256) * (1 - 0.625 * tau));
    }
}

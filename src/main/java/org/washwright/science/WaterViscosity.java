package org.washwright.science;

/**
 * Viscosity of liquid water at atmospheric pressure.
 *
 * <p>μ = Σ aᵢ (T/300 K)^bᵢ µPa s with a = 280.68, 511.45, 61.131, 0.45903 and b = −1.9, −7.7, −19.6, −40.0; 253 K to 383 K,
 * within 1 %. Source: Pátek, Hrubý, Klomfar, Součková and Harvey, J. Phys. Chem. Ref. Data 38 (2009) 21, equation 5 (from
 * memory; the same is printed as IAPWS supplementary release SR6-08).
 */
public final class WaterViscosity {

    private static final double[] A = {280.68, 511.45, 61.131, 0.45903};
    private static final double[] B = {-1.9, -7.7, -19.6, -40.0};
    private static final Range RANGE = new Range("the viscosity of water is given", 253.15, 383.15);

    private WaterViscosity() {}

    /** Dynamic viscosity, Pa s, at a temperature, K. */
    public static Estimate dynamic(double kelvin) {
        double reduced = Require.positive(kelvin, "temperature") / 300;
        double sum = 0;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * StrictMath.pow(reduced, B[i]);
        }
        return RANGE.at(kelvin, sum * 1e-6);
    }

    /** Kinematic viscosity, m²/s, at a temperature, K. */
    public static Estimate kinematic(double kelvin) {
        return dynamic(kelvin).with(WaterDensity.at(kelvin), (mu, rho) -> mu / rho);
    }
}

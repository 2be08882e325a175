package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Viscosity of liquid water at 0.1 MPa: {@code mu / 1 µPa s = sum a_i (T / 300 K)^b_i}, four terms (IAPWS SR6-08(2011),
 * Supplementary Release on Properties of Liquid Water at 0.1 MPa, equation for the viscosity; also Pátek et al., J. Phys. Chem. Ref. Data 38
 * (2009) 21).
 *
 * <p>T in K; uncertainty 1 % and better. Valid from 253.15 K to 383.15 K (supercooled below 0 °C, and above 100 °C only under the pressure that
 * keeps it liquid, whose effect is far below 1 %); outside, the value is given with a warning. Baths with builders and
 * surfactants are a little more viscous.
 */
public final class WaterViscosity {

    private static final double[] A = {280.68, 511.45, 61.131, 0.45903};
    private static final double[] B = {-1.9, -7.7, -19.6, -40.0};
    private static final double LOWEST = 253.15;
    private static final double HIGHEST = 383.15;

    private WaterViscosity() {}

    /**
     * Dynamic viscosity in Pa s at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate dynamic(double temperature) {
        Need.positive(temperature, "temperature", "K");
        double reduced = temperature / 300;
        double sum = 0;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * StrictMath.pow(reduced, B[i]);
        }
        return Need.within(
                Estimate.of(sum * 1e-6),
                temperature,
                LOWEST,
                HIGHEST,
                Dimension.TEMPERATURE,
                "The viscosity of liquid water holds");
    }

    /**
     * Kinematic viscosity in m²/s at a temperature in K, with the density by Kell.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate kinematic(double temperature) {
        Estimate dynamic = dynamic(temperature);
        Estimate density = WaterDensity.density(temperature);
        return dynamic.withValue(dynamic.value() / density.value()).warnAs(density);
    }
}

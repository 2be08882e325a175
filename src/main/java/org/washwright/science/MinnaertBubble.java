package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Radius of the gas bubble that resonates with a sound wave (Minnaert, Philosophical Magazine 16 (1933) 235): {@code R = sqrt(3
 * kappa p / rho) / (2 pi f)}.
 *
 * <p>R in m, f frequency in Hz, p ambient pressure in Pa, rho density of the liquid in kg/m³, kappa = 1.4 (air, adiabatic). In water at
 * one atmosphere R f is near 3.3 m/s. Surface tension is left out: from 10 µm down it, and heat lost by small bubbles, shift
 * the radius, and above 10 mm bubbles are no spheres; there the value is given with a warning.
 */
public final class MinnaertBubble {

    private static final double ADIABATIC = 1.4;
    private static final double SMALLEST = 10e-6;
    private static final double LARGEST = 10e-3;

    private MinnaertBubble() {}

    /**
     * Radius in m that resonates at a frequency in Hz.
     *
     * @throws RefusedInput for a quantity that is not above zero
     */
    public static Estimate radius(double frequency, double pressure, double density) {
        Need.positive(frequency, "frequency", "Hz");
        double radius = product(pressure, density) / frequency;
        return warned(radius, radius);
    }

    /**
     * Frequency in Hz at which a bubble of a radius in m resonates.
     *
     * @throws RefusedInput for a quantity that is not above zero
     */
    public static Estimate frequency(double radius, double pressure, double density) {
        Need.positive(radius, "radius of the bubble", "m");
        return warned(product(pressure, density) / radius, radius);
    }

    /** Radius times frequency in m/s. */
    private static double product(double pressure, double density) {
        Need.positive(pressure, "ambient pressure", "Pa");
        Need.positive(density, "density of the liquid", "kg/m³");
        return StrictMath.sqrt(3 * ADIABATIC * pressure / density) / (2 * StrictMath.PI);
    }

    private static Estimate warned(double value, double radius) {
        return Need.within(
                Estimate.of(value),
                radius,
                SMALLEST,
                LARGEST,
                Dimension.FINE_LENGTH,
                "Minnaert's resonance without surface tension holds for bubbles");
    }
}

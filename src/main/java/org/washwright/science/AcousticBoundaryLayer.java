package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Thickness of the layer at a wall in which a sound wave's movement dies out (Stokes 1851): {@code delta = sqrt(nu / (pi f))}.
 *
 * <p>delta in m, nu kinematic viscosity in m²/s, f frequency in Hz. Particles far smaller than the layer are shielded by it (Qi
 * and Brereton, IEEE Transactions on Ultrasonics 42 (1995) 619). Meant for 16 kHz to 3 MHz, ultrasonic and megasonic baths;
 * outside, the value is given with a warning. Cavitation is not in it, and at low frequency it is what cleans.
 */
public final class AcousticBoundaryLayer {

    private static final double LOWEST = 16e3;
    private static final double HIGHEST = 3e6;

    private AcousticBoundaryLayer() {}

    /**
     * Thickness in m.
     *
     * @throws RefusedInput for a viscosity or frequency that is not above zero
     */
    public static Estimate thickness(double kinematicViscosity, double frequency) {
        Need.positive(kinematicViscosity, "kinematic viscosity", "m²/s");
        Need.positive(frequency, "frequency", "Hz");
        return warned(StrictMath.sqrt(kinematicViscosity / (StrictMath.PI * frequency)), frequency);
    }

    /**
     * Frequency in Hz at which the layer has a thickness in m.
     *
     * @throws RefusedInput for a viscosity or thickness that is not above zero
     */
    public static Estimate frequency(double kinematicViscosity, double thickness) {
        Need.positive(kinematicViscosity, "kinematic viscosity", "m²/s");
        Need.positive(thickness, "thickness of the layer", "m");
        double frequency = kinematicViscosity / (StrictMath.PI * thickness * thickness);
        return warned(frequency, frequency);
    }

    private static Estimate warned(double value, double frequency) {
        return Need.within(
                Estimate.of(value),
                frequency,
                LOWEST,
                HIGHEST,
                Dimension.FREQUENCY,
                "The layer is reckoned for ultrasonic and megasonic baths");
    }
}

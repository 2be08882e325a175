package org.washwright.science;

/**
 * Thickness of the layer in which a sound wave along a wall is damped, m, by Stokes: δ = √(ν / (π f)). Particles much smaller
 * than it are shielded: Qi and Brereton, IEEE UFFC 42 (1995) 619.
 */
public final class AcousticBoundaryLayer {

    private AcousticBoundaryLayer() {}

    /** Thickness: kinematic viscosity m²/s, frequency Hz. */
    public static double thickness(double kinematicViscosity, double frequency) {
        return StrictMath.sqrt(Require.positive(kinematicViscosity, "viscosity")
                / (Math.PI * Require.positive(frequency, "frequency")));
    }
}

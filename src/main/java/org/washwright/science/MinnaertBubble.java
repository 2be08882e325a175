package org.washwright.science;

/**
 * Resonant radius of a gas bubble in water at atmospheric pressure, by Minnaert, Phil. Mag. 16 (1933) 235: r = 3.26 m/s / f.
 * Surface tension is left out, which below about 10 µm makes the radius too large by some percent.
 */
public final class MinnaertBubble {

    private static final double PRODUCT = 3.26;
    private static final double SMALLEST = 10e-6;

    private MinnaertBubble() {}

    /** Radius, m, at a frequency, Hz. */
    public static Estimate radius(double frequency) {
        double radius = PRODUCT / Require.positive(frequency, "frequency");
        Estimate estimate = Estimate.of(radius);
        return radius >= SMALLEST
                ? estimate
                : estimate.warn("below a radius of 10 µm surface tension makes the bubble smaller than said");
    }
}

package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Power that ultrasonic tanks usually have for their volume: a straight line over the logarithm of the volume from 80
 * W/gal at 3.4 gal to 20 W/gal at 50 gal, flat beyond (points as printed: a device manual, 20 W/gal above 50 gal and 80
 * W/gal at 3.4 gal; the plot of four suppliers in Metal Finishing 2013, p. 75, falls likewise).
 *
 * <p>W/m³ from m³: 21 134 to 5283 W/m³. The line is a reading of a wide band, from 50 to 100 W/gal in small tanks and
 * 20 to 60 W/gal in large ones: half or double is usual too. Tanks below 3.4 gal (12.87 L) reach 125 W/gal: there 80
 * W/gal is given with a warning.
 */
public final class UltrasonicPower {

    private static final double GALLON = 3.785411784e-3;
    private static final double SMALL = 3.4 * GALLON;
    private static final double LARGE = 50 * GALLON;
    private static final double SMALL_DENSITY = 80 / GALLON;
    private static final double LARGE_DENSITY = 20 / GALLON;

    private UltrasonicPower() {}

    /**
     * Usual power density in W/m³ of a tank of a volume in m³.
     *
     * @throws RefusedInput for a volume that is not above zero
     */
    public static Estimate usualPowerDensity(double volume) {
        Need.positive(volume, "volume of the tank", "m³");
        double share = StrictMath.log(volume / SMALL) / StrictMath.log(LARGE / SMALL);
        double inside = StrictMath.max(0, StrictMath.min(1, share));
        return Estimate.of(SMALL_DENSITY + inside * (LARGE_DENSITY - SMALL_DENSITY))
                .warnIf(
                        volume < SMALL * (1 - 1e-9),
                        () -> "Powers are printed for tanks from " + Need.text(SMALL, Dimension.VOLUME) + ", not for "
                                + Need.text(volume, Dimension.VOLUME) + ": smaller tanks have up to 33 W/L");
    }
}

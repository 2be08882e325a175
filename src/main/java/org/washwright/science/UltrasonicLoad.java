package org.washwright.science;

/**
 * Smallest water volume for a load of parts in an ultrasonic tank: {@code V = m / (s rho)}, parts at most half the mass
 * of the water (a device manual), one third preferred (Metal Finishing 2013).
 *
 * <p>V in m³, m mass of the parts in kg, s parts over water by mass, rho density of the bath in kg/m³. A share above
 * one half is taken with a warning: the parts then swallow the sound.
 */
public final class UltrasonicLoad {

    private static final double MOST = 0.5;

    private UltrasonicLoad() {}

    /**
     * Volume in m³.
     *
     * @throws RefusedInput for a negative mass, a share outside 0 to 1 or a density that is not above zero
     */
    public static Estimate smallestWaterVolume(double partsMass, double massShare, double density) {
        Need.notNegative(partsMass, "mass of the parts", "kg");
        Need.positive(massShare, "parts over water by mass", "");
        Need.between(massShare, 0, 1, "parts over water by mass", "");
        Need.positive(density, "density of the bath", "kg/m³");
        return Estimate.of(partsMass / (massShare * density))
                .warnIf(
                        massShare > MOST,
                        () -> "Parts may weigh half as much as the water at most, better a third, not "
                                + Need.text(massShare) + " of it: they swallow the sound");
    }
}

package org.washwright.science;

/**
 * Speed at which drops of oil rise in a bath (Stokes 1851, from memory): {@code v = g d^2 (rho - rho_oil) / (18 mu)}.
 *
 * <p>v in m/s, g = 9.80665 m/s², d diameter of the drops in m, densities in kg/m³, mu viscosity of the bath in Pa s.
 * Holds while the Reynolds number {@code 1000 v d / mu} of a bath of water is below 1; above, drops rise more slowly,
 * and the value is given with a warning. Drops are taken as rigid, as those in baths with surfactants are. Emulsified
 * drops of 10 µm rise 0.01 mm/s: no tank is calm enough for that.
 */
public final class OilRise {

    private static final double GRAVITY = 9.80665;
    private static final double WATER = 1000;
    private static final double CREEPING = 1;

    private OilRise() {}

    /**
     * Speed in m/s.
     *
     * @param diameter m
     * @param densityDifference of bath and oil, kg/m³
     * @param viscosity Pa s
     * @throws RefusedInput for a negative quantity or a viscosity that is not above zero
     */
    public static Estimate velocity(double diameter, double densityDifference, double viscosity) {
        Need.notNegative(diameter, "diameter of the drops", "m");
        Need.notNegative(densityDifference, "difference of the densities", "kg/m³");
        Need.positive(viscosity, "dynamic viscosity", "Pa s");
        double velocity = GRAVITY * diameter * diameter * densityDifference / (18 * viscosity);
        double reynolds = WATER * velocity * diameter / viscosity;
        return Estimate.of(velocity)
                .warnIf(
                        reynolds > CREEPING,
                        () -> "Stokes' law holds for creeping drops with a Reynolds number to 1, not "
                                + Need.text(reynolds) + ": they rise more slowly");
    }
}

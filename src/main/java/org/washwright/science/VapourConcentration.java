package org.washwright.science;

/**
 * Share of a vapour in air against its mass in it: {@code c = x M p / (R T)}.
 *
 * <p>x mole fraction (500 ppm = 0.0005), M molar mass in kg/mol, c in kg/m³, T in K, p in Pa. At 25 °C and one atmosphere this
 * is the trade's {@code mg/m³ = ppm M / 24.45} (29 CFR 1910.1000, table Z-1, footnote; ACGIH, introduction to the TLVs). A
 * limit in ppm does not move with temperature, its mass does: say at which temperature. A share below 0 or above 1 is refused.
 */
public final class VapourConcentration {

    private VapourConcentration() {}

    /**
     * Mass concentration in kg/m³ of a mole fraction.
     *
     * @throws RefusedInput for a fraction outside 0 to 1 or a quantity that is not above zero
     */
    public static Estimate massConcentration(
            double moleFraction, double molarMass, double temperature, double pressure) {
        Need.between(moleFraction, 0, 1, "share of vapour in air", "");
        return GasVolume.mass(moleFraction, molarMass, temperature, pressure);
    }

    /**
     * Mole fraction of a mass concentration in kg/m³; above 1 there is more vapour than the pressure allows, so 1 with a
     * warning.
     *
     * @throws RefusedInput for a negative concentration or a quantity that is not above zero
     */
    public static Estimate moleFraction(
            double massConcentration, double molarMass, double temperature, double pressure) {
        Estimate share = GasVolume.volume(massConcentration, molarMass, temperature, pressure);
        return share.value() <= 1
                ? share
                : share.withValue(1)
                        .warn(Need.text(massConcentration)
                                + " kg/m³ is more than pure vapour weighs at this temperature and pressure; part of it is mist"
                                + " or the figure is wrong");
    }
}

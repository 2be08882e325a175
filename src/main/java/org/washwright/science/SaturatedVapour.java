package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Vapour in still air that has taken up all it can: {@code x = pv / p}, {@code c = pv M / (R T)} (Dalton's law and the ideal
 * gas law; any textbook of physical chemistry).
 *
 * <p>pv vapour pressure in Pa at the temperature of the liquid, p ambient pressure in Pa, M molar mass in kg/mol, T in K. Meant
 * for a liquid below its boiling point; where pv reaches p the liquid boils, the air is driven out and the answer is pure
 * vapour at ambient pressure, with a warning. Air over an open bath is rarely saturated: this is the worst case.
 */
public final class SaturatedVapour {

    private SaturatedVapour() {}

    /**
     * Mole fraction of the vapour, at most 1.
     *
     * @throws RefusedInput for a negative vapour pressure or an ambient pressure that is not above zero
     */
    public static Estimate moleFraction(double vapourPressure, double ambientPressure) {
        Need.notNegative(vapourPressure, "vapour pressure", "Pa");
        Need.positive(ambientPressure, "ambient pressure", "Pa");
        return Estimate.of(StrictMath.min(1, vapourPressure / ambientPressure))
                .warnIf(
                        vapourPressure >= ambientPressure,
                        () -> "The liquid boils: its vapour pressure of "
                                + Need.text(vapourPressure, Dimension.LOW_PRESSURE) + " reaches the ambient "
                                + Need.text(ambientPressure, Dimension.LOW_PRESSURE));
    }

    /**
     * Mass of vapour in the air in kg/m³.
     *
     * @throws RefusedInput as {@link #moleFraction}, or for a molar mass or temperature that is not above zero
     */
    public static Estimate massConcentration(
            double vapourPressure, double ambientPressure, double molarMass, double temperature) {
        Estimate share = moleFraction(vapourPressure, ambientPressure);
        return share.withValue(
                VapourConcentration.massConcentration(share.value(), molarMass, temperature, ambientPressure)
                        .value());
    }
}

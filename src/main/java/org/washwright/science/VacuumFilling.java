package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * How much of a blind hole fills when it is evacuated, flooded and let back to ambient pressure (Dalton's and Boyle's laws):
 * {@code filled = 1 - (p - pv) / (p0 - pv)}.
 *
 * <p>p evacuated pressure, pv vapour pressure of the liquid in the chamber at its temperature (0 when the liquid comes only
 * after the pumping), p0 ambient pressure, all in Pa. Vapour condenses on return, air stays. At or below the vapour pressure
 * the liquid boils and its vapour sweeps the air out: filled 1, with a warning. An evacuated pressure above the ambient one is
 * refused.
 */
public final class VacuumFilling {

    private VacuumFilling() {}

    /**
     * Share of the hole that fills with liquid, 0 to 1.
     *
     * @throws RefusedInput for a pressure below zero, or one called evacuated that is above the ambient one
     */
    public static Estimate filledShare(double evacuatedPressure, double vapourPressure, double ambientPressure) {
        Need.positive(ambientPressure, "ambient pressure", "Pa");
        Need.notNegative(evacuatedPressure, "evacuated pressure", "Pa");
        Need.notNegative(vapourPressure, "vapour pressure of the liquid", "Pa");
        if (vapourPressure > 0 && evacuatedPressure <= vapourPressure) {
            return Estimate.of(1)
                    .warn("At " + Need.text(evacuatedPressure, Dimension.LOW_PRESSURE)
                            + " the liquid boils, for its vapour pressure is "
                            + Need.text(vapourPressure, Dimension.LOW_PRESSURE)
                            + ": the pump has to carry vapour, and a fire risk goes with a flammable one");
        }
        Need.between(evacuatedPressure, 0, ambientPressure, "evacuated pressure", "Pa");
        return Estimate.of(1 - (evacuatedPressure - vapourPressure) / (ambientPressure - vapourPressure));
    }
}

package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Air that a slot along the rim of an open tank extracts: {@code Q = A q} (ACGIH, Industrial Ventilation, open surface
 * tanks, from memory: q from 100 to 250 cfm/ft², by class of hazard and shape).
 *
 * <p>Q in m³/s, A in m², q in m³/(s m²), 0.508 to 1.27. Outside, the value is given with a warning. Draughts across the
 * tank, a tank wider than 0.9 m and hot work need more or a push-pull hood. For planning only: the hood is designed by
 * someone competent.
 */
public final class RimExhaust {

    /** Rounding on the way from cubic feet must not look like a value outside. */
    private static final double SLACK = 1e-9;

    private static final double LOWEST = 0.508;
    private static final double HIGHEST = 1.27;

    private RimExhaust() {}

    /**
     * Air flow in m³/s.
     *
     * @throws RefusedInput for a negative quantity
     */
    public static Estimate flow(double area, double flowPerArea) {
        Need.notNegative(area, "area of the tank", "m²");
        Need.notNegative(flowPerArea, "air flow for each area of the tank", "m/s");
        return Need.within(
                Estimate.of(area * flowPerArea),
                flowPerArea,
                LOWEST * (1 - SLACK),
                HIGHEST * (1 + SLACK),
                Dimension.VELOCITY,
                "Air for slots at the rim is published");
    }
}

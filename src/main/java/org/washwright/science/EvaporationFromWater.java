package org.washwright.science;

/**
 * Water that evaporates from a free surface: {@code m = (25 + 19 v) A (xs - x)} in kg/h (The Engineering ToolBox,
 * evaporation from a water surface).
 *
 * <p>v air over the surface in m/s, A in m², x kilograms of water for each kilogram of dry air in the room, xs the same
 * of saturated air at the temperature of the water (see {@link HumidAir}). The answer is in kg/s. Published models of
 * the same surface differ by 30 %. Above xs = 0.28, about 70 °C, xs grows without end while the loss does not: the
 * value is given with a warning, and {@link TankSurfaceLoss} is better. Into air that is moister than xs nothing
 * evaporates: zero with a warning.
 */
public final class EvaporationFromWater {

    private static final double STILL = 25;
    private static final double PER_VELOCITY = 19;
    private static final double HOUR = 3600;
    private static final double HIGHEST = 0.28;

    private EvaporationFromWater() {}

    /**
     * Mass rate in kg/s.
     *
     * @param area m²
     * @param airVelocity m/s
     * @param saturatedRatio humidity ratio at the temperature of the water
     * @param ratio humidity ratio of the air
     * @throws RefusedInput for a negative or endless quantity
     */
    public static Estimate massRate(double area, double airVelocity, double saturatedRatio, double ratio) {
        Need.notNegative(area, "area of the surface", "m²");
        Need.notNegative(airVelocity, "velocity of the air", "m/s");
        Need.notNegative(saturatedRatio, "humidity ratio over the water", "");
        Need.notNegative(ratio, "humidity ratio of the air", "");
        double difference = StrictMath.max(0, saturatedRatio - ratio);
        return Estimate.of((STILL + PER_VELOCITY * airVelocity) * area * difference / HOUR)
                .warnIf(
                        saturatedRatio > HIGHEST,
                        "Evaporation by the humidity ratio is too high for water above about 70 °C")
                .warnIf(
                        ratio > saturatedRatio,
                        "The air is moister than the air at the water: nothing evaporates, water condenses");
    }
}

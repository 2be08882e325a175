package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Heat that the walls of a hot tank lose (The Engineering ToolBox, heat loss from open water tanks: at 150 °F in air of
 * 60 °F 180 Btu/h ft² bare, 34, 18 and 13 behind 1, 2 and 3 inches of insulation), scaled by the temperature
 * difference.
 *
 * <p>W/m² from K and m; straight lines between the thicknesses. The scaling is exact for insulated walls and rough for
 * bare ones, whose loss rises faster than the difference: beyond 100 K the value is given with a warning. Beyond 3
 * inches it is that of 3 inches, with a warning. A wall that is not warmer than the air loses nothing, with a warning.
 */
public final class TankWallLoss {

    private static final double BTU = 3.154590745;
    private static final double INCH = 0.0254;
    private static final double PRINTED_DIFFERENCE = 50;
    private static final double LARGEST_DIFFERENCE = 100;
    private static final double[] THICKNESS = {0, INCH, 2 * INCH, 3 * INCH};
    private static final double[] LOSS = {180, 34, 18, 13};

    private TankWallLoss() {}

    /**
     * Heat flux through the wall, W/m².
     *
     * @param wallTemperature of the liquid behind the wall, K
     * @param ambient temperature of the air, K
     * @param insulation thickness, m; 0 for a bare wall
     * @throws RefusedInput for a temperature that is not above zero or a negative thickness
     */
    public static Estimate flux(double wallTemperature, double ambient, double insulation) {
        Need.positive(wallTemperature, "temperature of the wall", "K");
        Need.positive(ambient, "temperature of the air", "K");
        Need.notNegative(insulation, "thickness of the insulation", "m");
        double difference = wallTemperature - ambient;
        double printed = BTU * StraightLines.at(insulation, THICKNESS, LOSS);
        return Estimate.of(printed * StrictMath.max(0, difference) / PRINTED_DIFFERENCE)
                .warnIf(difference < 0, "A wall colder than the air loses no heat: it takes heat up")
                .warnIf(
                        difference > LARGEST_DIFFERENCE,
                        () -> "The printed losses are for a wall 50 K warmer than the air; at " + Need.text(difference)
                                + " K a bare wall loses more")
                .warnIf(
                        insulation > THICKNESS[3],
                        () -> "Losses are printed up to 76.2 mm of insulation, not for "
                                + Need.text(insulation, Dimension.LENGTH) + ": the true loss is smaller");
    }
}

package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Heat that open hot water loses from its surface to still air of 60 °F (The Engineering ToolBox, heat loss from open
 * water tanks: table from 90 to 210 °F in Btu/h ft², by evaporation, and by radiation and convection together).
 *
 * <p>W/m² from T in K, straight lines between the rows. The source calls its figures rough. Holds from 305.4 K to 372.0
 * K (32.2 to 98.9 °C). Below, the value falls in a straight line to nothing at the air's 288.7 K, and above it is that
 * of the last row, each with a warning. A draught of 3 mph more than doubles the loss, and a moist hall lessens it;
 * covers and balls are not meant.
 */
public final class TankSurfaceLoss {

    /** W/m² for each Btu/h ft², with the Btu of the International Table. */
    private static final double BTU = 3.154590745;

    private static final double AMBIENT = kelvin(60);
    private static final double FIRST = kelvin(90);
    private static final double LAST = kelvin(210);
    private static final double[] ROWS = rows();
    private static final double[] EVAPORATION = {0, 80, 160, 240, 360, 480, 660, 860, 1100, 1380, 1740, 2160, 2680, 3240
    };
    private static final double[] RADIATION = {0, 50, 70, 90, 110, 135, 160, 180, 210, 235, 260, 290, 320, 360};

    private TankSurfaceLoss() {}

    /**
     * Loss by evaporation, W/m².
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate evaporative(double temperature) {
        return warned(BTU * at(temperature, EVAPORATION), temperature);
    }

    /**
     * Loss by radiation and convection, W/m².
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate radiantAndConvective(double temperature) {
        return warned(BTU * at(temperature, RADIATION), temperature);
    }

    /**
     * Both, W/m².
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate total(double temperature) {
        return warned(BTU * (at(temperature, EVAPORATION) + at(temperature, RADIATION)), temperature);
    }

    /**
     * Water that evaporates, kg/(m² s): the loss by evaporation over the latent heat at the temperature of the bath.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate evaporatedMass(double temperature) {
        Estimate loss = evaporative(temperature);
        double hottest = StrictMath.min(temperature, LAST);
        Estimate latent = WaterLatentHeat.at(hottest);
        return loss.withValue(loss.value() / latent.value()).warnAs(latent);
    }

    private static double at(double temperature, double[] column) {
        Need.positive(temperature, "temperature", "K");
        return StraightLines.at(temperature, ROWS, column);
    }

    private static Estimate warned(double value, double temperature) {
        return Need.within(
                Estimate.of(value),
                temperature,
                FIRST,
                LAST,
                Dimension.TEMPERATURE,
                "The table of open tanks in still air of 15.6 °C holds");
    }

    private static double[] rows() {
        double[] rows = new double[14];
        rows[0] = AMBIENT;
        for (int i = 1; i < rows.length; i++) {
            rows[i] = kelvin(80 + 10 * i);
        }
        return rows;
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }
}

package org.washwright.science;

/**
 * Density of air-free liquid water at one atmosphere, by Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16; 0 to 150 °C,
 * t in °C: (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵) / (1 +
 * 16.879850e-3 t) kg/m³.
 */
public final class WaterDensity {

    private static final double[] C = {999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12
    };
    private static final double BELOW = 16.879850e-3;
    private static final Range RANGE = new Range("the density of water is given", 273.15, 423.15);

    private WaterDensity() {}

    /** Density, kg/m³, at a temperature, K. */
    public static Estimate at(double kelvin) {
        double t = Require.positive(kelvin, "temperature") - 273.15;
        double sum = 0;
        for (int i = C.length - 1; i >= 0; i--) {
            sum = sum * t + C[i];
        }
        return RANGE.at(kelvin, sum / (1 + BELOW * t));
    }
}

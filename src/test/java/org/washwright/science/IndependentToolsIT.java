package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;

/**
 * Units and correlations against programs written by others: GNU Units 2.22 and, in Python, pint, iapws and scipy. A missing
 * program fails the test.
 */
class IndependentToolsIT {

    /** Amount and unit of ours, dimension, the same in the words of GNU Units, and the coherent SI unit in its words. */
    @ParameterizedTest
    @CsvSource({
        "6, mm, LENGTH, 6 mm, m",
        "12.5, in, LENGTH, 12.5 inch, m",
        "3, ft, LENGTH, 3 feet, m",
        "400, um, FINE_LENGTH, 400 micrometer, m",
        "0.4, µm, FINE_LENGTH, 0.4 micron, m",
        "120, cm2, AREA, 120 cm^2, m^2",
        "7, in2, AREA, 7 in^2, m^2",
        "250, ft2, AREA, 250 ft^2, m^2",
        "400, L, VOLUME, 400 liter, m^3",
        "55, gal, VOLUME, 55 gallon, m^3",
        "20, ml, VOLUME, 20 milliliter, m^3",
        "4000, ft3, HALL_VOLUME, 4000 ft^3, m^3",
        "310, g, MASS, 310 gram, kg",
        "5, lb, MASS, 5 pound, kg",
        "3, oz, MASS, 3 ounce, kg",
        "2, t, MASS, 2 tonne, kg",
        "90, min, TIME, 90 minutes, s",
        "7, d, TIME, 7 days, s",
        "2, week, TIME, 2 weeks, s",
        "1200, 1/h, RATE, 1200 /hour, /s",
        "2, g/m2, AREAL_MASS, 2 g/m^2, kg/m^2",
        "5, mg/1000 cm2, AREAL_MASS, 5 mg/(1000 cm^2), kg/m^2",
        "3, mg/ft2, AREAL_MASS, 3 mg/ft^2, kg/m^2",
        "14, m2/h, AREA_RATE, 14 m^2/hour, m^2/s",
        "30, g/h, MASS_RATE, 30 g/hour, kg/s",
        "2, lb/h, MASS_RATE, 2 lb/hour, kg/s",
        "60, L/h, VOLUME_RATE, 60 liter/hour, m^3/s",
        "8, gal/min, VOLUME_RATE, 8 gallon/minute, m^3/s",
        "6000, m3/h, AIR_FLOW, 6000 m^3/hour, m^3/s",
        "1424, ft3/min, AIR_FLOW, 1424 ft^3/minute, m^3/s",
        "5, kPa, LOW_PRESSURE, 5 kPa, Pa",
        "1013, hPa, LOW_PRESSURE, 1013 hPa, Pa",
        "1000, N/mm2, PRESSURE, 1000 N/mm^2, Pa",
        "145, ksi, PRESSURE, 145 ksi, Pa",
        "60, psi, PRESSURE, 60 psi, Pa",
        "6, bar, PRESSURE, 6 bar, Pa",
        "1.5, atm, PRESSURE, 1.5 atm, Pa",
        "20, g/L, CONCENTRATION, 20 g/liter, kg/m^3",
        "3, oz/gal, CONCENTRATION, 3 ounce/gallon, kg/m^3",
        "50, mg/m3, MASS_CONCENTRATION_IN_AIR, 50 mg/m^3, kg/m^3",
        "0.88, g/cm3, DENSITY, 0.88 g/cm^3, kg/m^3",
        "62.4, lb/ft3, DENSITY, 62.4 lb/ft^3, kg/m^3",
        "40, kHz, FREQUENCY, 40 kHz, Hz",
        "12, kW, POWER, 12 kW, W",
        "10, W/L, POWER_DENSITY, 10 W/liter, W/m^3",
        "80, W/gal, POWER_DENSITY, 80 W/gallon, W/m^3",
        "5, kWh, ENERGY, 5 kW hour, J",
        "4, A/dm2, CURRENT_DENSITY, 4 A/dm^2, A/m^2",
        "40, A/ft2, CURRENT_DENSITY, 40 A/ft^2, A/m^2",
        "2, ft/s, VELOCITY, 2 ft/s, m/s",
        "0.2, gal/ft2, VOLUME_PER_AREA, 0.2 gallon/ft^2, m",
        "30, uS/cm, CONDUCTIVITY, 30 uS/cm, S/m",
        "30, mN/m, SURFACE_TENSION, 30 dyne/cm, N/m",
        "1.2, mPa s, VISCOSITY, 1.2 centipoise, Pa s",
        "35, °, ANGLE, 35 degree, radian",
        "500, ppm, TINY_SHARE, 500 ppm, 1",
        "25, %, SHARE, 25 %, 1",
        "60, °C, TEMPERATURE, tempC(60), tempK",
        "-40, °C, TEMPERATURE, tempC(-40), tempK",
        "140, °F, TEMPERATURE, tempF(140), tempK",
        "-40, °F, TEMPERATURE, tempF(-40), tempK",
        "27, °F, TEMPERATURE_DIFFERENCE, 27 degF, K",
    })
    void unitsAreThoseOfGnuUnits(String amount, String unit, Dimension dimension, String gnu, String si) {
        assertTrue(Quantities.isUnitOf(unit, dimension), unit);
        double expected = Tool.units(gnu, si);
        double found = Quantities.toSi(amount, unit, dimension);
        assertEquals(expected, found, 4e-15 * Math.abs(expected));
        assertEquals(Double.parseDouble(amount), Quantities.fromSi(found, unit, dimension), 1e-12);
    }

    /** A year is 365 days here, for yearly hours and costs; GNU Units takes the tropical year, 0.07 % longer. */
    @Test
    void aYearIsTheCommonYearAndNotTheTropicalOne() {
        double year = Quantities.toSi("1", "year", Dimension.TIME);
        assertEquals(Tool.units("365 days", "s"), year);
        assertEquals(1.00066, Tool.units("year", "s") / year, 1e-5);
    }

    /** pint, which also knows roots of units; a tilde stands for a blank. */
    @Test
    void unitsAreThoseOfPint() {
        String[][] rows = {
            {"16.0", "MPa^0.5", "SOLUBILITY_PARAMETER", "MPa**0.5", "Pa**0.5"},
            {"12", "kg", "MASS", "kg", "kg"},
            {"58.08", "g/mol", "MOLAR_MASS", "g/mol", "kg/mol"},
            {"2.5", "m/s", "VELOCITY", "m/s", "m/s"},
            {"20", "mg/m2", "AREAL_MASS", "mg/m**2", "kg/m**2"},
            {"55", "gal", "VOLUME", "gallon", "m**3"},
            {"60", "psi", "PRESSURE", "psi", "Pa"},
            {"3", "oz/gal", "CONCENTRATION", "oz/gallon", "kg/m**3"},
            {"40", "A/ft2", "CURRENT_DENSITY", "A/ft**2", "A/m**2"},
            {"1e-9", "m2/s", "DIFFUSIVITY", "m**2/s", "m**2/s"},
            {"72.8", "mN/m", "SURFACE_TENSION", "mN/m", "N/m"},
            {"1.2", "mPa s", "VISCOSITY", "mPa*s", "Pa*s"},
            {"140", "°F", "TEMPERATURE", "degF", "kelvin"},
            {"30", "µS/cm", "CONDUCTIVITY", "uS/cm", "S/m"},
            {"8", "gal/min", "VOLUME_RATE", "gallon/minute", "m**3/s"},
        };
        List<String> requests = new ArrayList<>();
        for (String[] row : rows) {
            requests.add("unit " + row[0] + " " + row[3] + " " + row[4]);
        }
        List<Double> answers = Tool.python(requests);
        for (int i = 0; i < rows.length; i++) {
            double expected = answers.get(i);
            assertEquals(
                    expected,
                    Quantities.toSi(rows[i][0], rows[i][1], Dimension.valueOf(rows[i][2])),
                    1e-14 * expected,
                    rows[i][1]);
        }
    }

    /** IAPWS-IF97 is another equation than Wagner's and Pruss's: both state 0.03 %. */
    @Test
    void waterVapourPressureIsThatOfIapws() {
        agree(
                "vapour-pressure",
                273.16,
                640,
                9.7,
                t -> WaterVapourPressure.pressure(t).value(),
                5e-4);
        agree(
                "boiling-temperature",
                1000,
                2e7,
                4.1e5,
                p -> WaterVapourPressure.boilingTemperature(p).value(),
                1e-4);
    }

    /** The same release (R1-76), coded by others. */
    @Test
    void waterSurfaceTensionIsThatOfIapws() {
        agree(
                "surface-tension",
                273.16,
                640,
                9.7,
                t -> WaterSurfaceTension.surfaceTension(t).value(),
                1e-12);
    }

    /** Kell 1975 against the supplementary release SR6-08 at 0.1 MPa, 0 to 100 °C: within 10 parts in a million below 60 °C. */
    @Test
    void waterDensityIsThatOfIapws() {
        agree("density", 273.15, 333.15, 2.5, t -> WaterDensity.density(t).value(), 1e-5);
        agree("density", 333.15, 373.15, 2.5, t -> WaterDensity.density(t).value(), 4e-5);
    }

    /** SR6-08 coded by others, and the full formulation R12-08 of steam and water, within the 1 % both state. */
    @Test
    void waterViscosityIsThatOfIapws() {
        agree("viscosity", 253.2, 383.1, 2.5, t -> WaterViscosity.dynamic(t).value(), 1e-12);
        agree(
                "viscosity-of-steam-and-water",
                273.15,
                373.15,
                2.5,
                t -> WaterViscosity.dynamic(t).value(),
                0.01);
    }

    private static void agree(
            String name, double low, double high, double step, DoubleUnaryOperator ours, double tolerance) {
        List<String> requests = new ArrayList<>();
        List<Double> found = new ArrayList<>();
        for (double x = low; x <= high; x += step) {
            requests.add(name + " " + x);
            found.add(ours.applyAsDouble(x));
        }
        compare(requests, found, tolerance);
    }

    private static void compare(List<String> requests, List<Double> found, double tolerance) {
        List<Double> expected = Tool.python(requests);
        for (int i = 0; i < found.size(); i++) {
            assertEquals(expected.get(i), found.get(i), tolerance * Math.abs(expected.get(i)), requests.get(i));
        }
    }

    /** scipy integrates the balances and solves the equations from which the formulas were derived. */
    @Test
    void formulasAreWhatScipyFindsFromTheirEquations() {
        Random random = new Random(23);
        List<String> requests = new ArrayList<>();
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double release = random.nextDouble() * 1e-3;
            double flow = 0.1 + random.nextDouble();
            double time = 60 + random.nextDouble() * 3600;
            requests.add("purge 0.004 0.0004 " + release + " " + flow + " 300 " + time);
            found.add(RoomConcentration.after(0.004, 4e-4, release, flow, 300, time)
                    .value());
            double tension = 0.02 + random.nextDouble() * 0.05;
            double angle = random.nextDouble();
            requests.add("washburn 5e-5 " + tension + " " + angle + " 0.001 " + time / 100);
            found.add(WashburnPenetration.length(5e-5, tension, angle, 0.001, time / 100)
                    .value());
            double depth = 0.01 + random.nextDouble() * 3;
            requests.add("hole 1000 " + depth + " 101325");
            found.add(TrappedAir.filledShare(1000, depth, 0, 101_325).value());
            double pressure = 1e3 + random.nextDouble() * 2e5;
            requests.add("antoine-boiling 10.24268 1580.92 -53.54 " + pressure);
            found.add(AntoineVapourPressure.log10(10.24268, 1580.92, -53.54, 281, 373)
                    .boilingTemperature(pressure)
                    .value());
        }
        compare(requests, found, 1e-6);
    }

    @Test
    void surfaceEnergiesAreWhatScipySolves() {
        List<String> requests = new ArrayList<>();
        List<Double> found = new ArrayList<>();
        for (double water = 60; water <= 90; water += 7.5) {
            for (double other = 30; other <= 60; other += 7.5) {
                double first = StrictMath.toRadians(water);
                double second = StrictMath.toRadians(other);
                SurfaceEnergy solid = OwensWendt.solid(
                                new OwensWendt.Measured(new SurfaceEnergy(0.0218, 0.051), first),
                                new OwensWendt.Measured(new SurfaceEnergy(0.0508, 0), second))
                        .energy();
                requests.add("owens-wendt " + first + " " + second + " 0");
                found.add(solid.dispersive() * 1e3);
                requests.add("owens-wendt " + first + " " + second + " 1");
                found.add(solid.polar() * 1e3);
            }
        }
        compare(requests, found, 1e-6);
    }
}

package org.washwright.science;

/**
 * Surface energy with a dispersive and a polar part, by Owens and Wendt, J. Appl. Polym. Sci. 13 (1969) 1741:
 * γL (1 + cos θ) = 2 (√(γSd γLd) + √(γSp γLp)).
 *
 * <p>The result hangs on the set of liquid data: sets differ by 5 mJ/m². Here: water 72.8 / 21.8 / 51.0 and diiodomethane 50.8 /
 * 50.8 / 0 mJ/m² (total, dispersive, polar), as in Ström, Fredriksson and Stenius (1987).
 */
public final class OwensWendt {

    private static final double WATER = 0.0728;
    private static final double WATER_DISPERSIVE = 0.0218;
    private static final double WATER_POLAR = 0.0510;
    private static final double DIIODOMETHANE = 0.0508;

    private OwensWendt() {}

    /** Surface energy of a solid, J/m², from the contact angles, rad, of water and diiodomethane. */
    public static Estimate ofWaterAndDiiodomethane(double water, double diiodomethane) {
        double dispersive =
                StrictMath.pow(YoungDupre.workOfAdhesion(DIIODOMETHANE, diiodomethane), 2) / (4 * DIIODOMETHANE);
        double rest = YoungDupre.workOfAdhesion(WATER, water) / 2 - StrictMath.sqrt(dispersive * WATER_DISPERSIVE);
        if (rest < 0) {
            return Estimate.of(dispersive).warn("the two contact angles leave no polar part; it is taken as zero");
        }
        return Estimate.of(dispersive + rest * rest / WATER_POLAR);
    }

    /** Contact angle, rad, of a liquid on a solid, both with dispersive and polar part in J/m²; zero where it spreads. */
    public static double contactAngle(
            double liquidDispersive, double liquidPolar, double solidDispersive, double solidPolar) {
        double liquid = Require.positive(liquidDispersive + liquidPolar, "surface tension");
        double cos = 2
                        * (StrictMath.sqrt(Require.notNegative(solidDispersive * liquidDispersive, "dispersive part"))
                                + StrictMath.sqrt(Require.notNegative(solidPolar * liquidPolar, "polar part")))
                        / liquid
                - 1;
        return StrictMath.acos(Math.min(1, cos));
    }

    /** Interfacial energy between solid and liquid, J/m², both with dispersive and polar part in J/m². */
    public static double interfacial(
            double liquidDispersive, double liquidPolar, double solidDispersive, double solidPolar) {
        return solidDispersive
                + solidPolar
                + liquidDispersive
                + liquidPolar
                - 2
                        * (StrictMath.sqrt(Require.notNegative(solidDispersive * liquidDispersive, "dispersive part"))
                                + StrictMath.sqrt(Require.notNegative(solidPolar * liquidPolar, "polar part")));
    }
}

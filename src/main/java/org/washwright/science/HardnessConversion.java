package org.washwright.science;

/**
 * Approximate conversion between Rockwell C, Vickers and tensile strength of unalloyed and low-alloy steel.
 *
 * <p>HRC and HV: ASTM E140, table 1 (non-austenitic steel); tensile strength: ISO 18265:2013, table A.1; values from memory,
 * rounded as there. Linear between rows. Valid for 20 to 65 HRC; for strength 770 to 2180 MPa (60 HRC). Outside, or for
 * other metals, no value is given. Conversions between hardness scales scatter by several per cent.
 */
public final class HardnessConversion {

    private static final double[] HRC = {
        20, 22, 24, 26, 28, 30, 31, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54, 56, 58, 60
    };
    private static final double[] HV = {
        238, 248, 260, 272, 286, 302, 310, 318, 336, 354, 372, 392, 412, 434, 458, 484, 513, 544, 577, 613, 653, 697
    };
    private static final double[] MPA = {
        770, 795, 830, 870, 915, 970, 995, 1020, 1080, 1140, 1200, 1265, 1335, 1410, 1490, 1575, 1670, 1775, 1885, 2005,
        2095, 2180
    };

    private HardnessConversion() {}

    /** Tensile strength in Pa of steel of this Rockwell C hardness; NaN outside 20 to 60 HRC. */
    public static double strengthOfRockwell(double hrc) {
        return interpolate(HRC, MPA, hrc) * 1e6;
    }

    /** Rockwell C hardness of steel of this Vickers hardness; NaN outside 238 to 697 HV. */
    public static double rockwellOfVickers(double hv) {
        return interpolate(HV, HRC, hv);
    }

    /** Rockwell C hardness of steel of this tensile strength in Pa; NaN outside 770 to 2180 MPa. */
    public static double rockwellOfStrength(double pascal) {
        return interpolate(MPA, HRC, pascal / 1e6);
    }

    /** By straight lines between rows; NaN outside the table. */
    private static double interpolate(double[] from, double[] to, double x) {
        if (!(x >= from[0] && x <= from[from.length - 1])) {
            return Double.NaN;
        }
        int i = 1;
        while (from[i] < x) {
            i++;
        }
        double share = (x - from[i - 1]) / (from[i] - from[i - 1]);
        return to[i - 1] + share * (to[i] - to[i - 1]);
    }
}

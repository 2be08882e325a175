package org.washwright.science;

/**
 * Particles on a surface by the log-log² law of MIL-STD-1246C (1994) and IEST-STD-CC1246D (2002): {@code log10 N = 0.926 ((log10
 * L)^2 - (log10 x)^2)}, as printed in Borson, SPIE 5897 (2005).
 *
 * <p>N count of particles of x micrometres and larger on the reference area, L level. The reference area is 1 ft² in the
 * military edition, 0.1 m² in the later one: 7 % apart, below all scatter, but say which. One article of 2005 prints
 * "0.1 ft²", against its own next sentence: a misprint. The law stands from 1 µm, where its distribution peaks, to x = L, where it
 * gives one particle, and for levels 1 to 1000; outside, the value is given with a warning. Particles as they fall from air follow it; those
 * of a cleaned part are often steeper.
 */
public final class ProductCleanlinessLevel {

    private static final double SLOPE = 0.926;
    private static final double HIGHEST = 1000;
    private static final double MICROMETRE = 1e-6;

    /** Edition of the standard, for the area that counts belong to. */
    public enum AreaBasis {
        /** MIL-STD-1246C: 1 ft². */
        SQUARE_FOOT(0.09290304),
        /** IEST-STD-CC1246D: 0.1 m². */
        TENTH_SQUARE_METRE(0.1);

        private final double area;

        AreaBasis(double area) {
            this.area = area;
        }

        /** Reference area in m². */
        public double area() {
            return area;
        }
    }

    private ProductCleanlinessLevel() {}

    /**
     * Particles of a size in m and larger per m².
     *
     * @throws RefusedInput for a level below 1 or a size that is not above zero
     */
    public static Estimate count(double level, double size, AreaBasis basis) {
        checked(level);
        double x = Need.positive(size, "size of a particle", "m") / MICROMETRE;
        double number = StrictMath.pow(10, SLOPE * (square(StrictMath.log10(level)) - square(StrictMath.log10(x))));
        return warned(number / basis.area(), level, x)
                .warnIf(
                        x > level * (1 + 1e-9),
                        () -> "At level " + Need.text(level) + " less than one particle is larger than " + Need.text(x)
                                + " µm on the reference area: count on more area");
    }

    /**
     * Level at which a count of particles of a size in m and larger per m² just is allowed.
     *
     * @throws RefusedInput for a count or size that is not above zero, or a count so low that no level has it
     */
    public static Estimate level(double countPerSquareMetre, double size, AreaBasis basis) {
        Need.positive(countPerSquareMetre, "count of particles per area", "1/m²");
        double x = Need.positive(size, "size of a particle", "m") / MICROMETRE;
        double root = StrictMath.log10(countPerSquareMetre * basis.area()) / SLOPE + square(StrictMath.log10(x));
        if (!(root >= 0)) {
            throw Need.refused(
                    countPerSquareMetre,
                    "count of particles of " + x + " µm",
                    "1/m²",
                    "so few are below level 1; count smaller ones or on more area");
        }
        double level = StrictMath.pow(10, StrictMath.sqrt(root));
        return warned(level, level, x);
    }

    private static void checked(double level) {
        if (!(level >= 1) || Double.isInfinite(level)) {
            throw Need.refused(level, "cleanliness level", "", "levels run from 1 to 1000");
        }
    }

    private static Estimate warned(double value, double level, double micrometres) {
        return Estimate.of(value)
                .warnIf(
                        micrometres < 1,
                        () -> "The cleanliness law holds from 1 µm, not at " + Need.text(micrometres)
                                + " µm: below its peak it falls again")
                .warnIf(level > HIGHEST, () -> "Cleanliness levels run from 1 to 1000, not to " + Need.text(level));
    }

    private static double square(double number) {
        return number * number;
    }
}

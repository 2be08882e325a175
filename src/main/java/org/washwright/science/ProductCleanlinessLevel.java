package org.washwright.science;

/**
 * Particle levels of IEST-STD-CC1246D (2002) and MIL-STD-1246C (1994): log10 N = 0.926 ((log10 L)² − (log10 x)²), N particles of
 * x µm and more on 0.1 m² (the military edition: on 1 ft²). Below 1 µm the law has no meaning.
 */
public final class ProductCleanlinessLevel {

    private static final double SLOPE = 0.926;

    private ProductCleanlinessLevel() {}

    /** Particles of a size, m, and more on 0.1 m² at a level. */
    public static Estimate count(double level, double size) {
        double um = Require.positive(size, "particle size") * 1e6;
        double l = StrictMath.log10(Require.positive(level, "level"));
        double x = StrictMath.log10(um);
        Estimate estimate = Estimate.of(StrictMath.pow(10, SLOPE * (l * l - x * x)));
        return um >= 1 ? estimate : estimate.warn("the law of product cleanliness levels starts at 1 µm");
    }

    /** Level at which a count of particles of a size, m, and more on 0.1 m² is just met. */
    public static Estimate level(double count, double size) {
        double um = Require.positive(size, "particle size") * 1e6;
        double x = StrictMath.log10(um);
        double square = StrictMath.log10(Require.positive(count, "count")) / SLOPE + x * x;
        Estimate estimate = Estimate.of(StrictMath.pow(10, StrictMath.sqrt(Math.max(0, square))));
        return um >= 1 ? estimate : estimate.warn("the law of product cleanliness levels starts at 1 µm");
    }
}

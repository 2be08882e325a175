package org.washwright.science;

/**
 * Fresh air that dilutes a vapour to an exposure limit: Q = G K / c.
 *
 * <p>Source: ACGIH, Industrial Ventilation, chapter on dilution (from memory); University of Toledo formula sheet. K runs from
 * 1 (ideal mixing) to 10. For vapours of low toxicity set free evenly and far from people; else enclose and exhaust.
 */
public final class DilutionAir {

    private DilutionAir() {}

    /** Air, m³/s, for a release, kg/s, down to a limit, kg/m³, with mixing factor K. */
    public static double needed(double release, double limit, double mixingFactor) {
        return Require.notNegative(release, "release") * mixing(mixingFactor) / Require.positive(limit, "limit");
    }

    /** Release, kg/s, that an air flow, m³/s, carries off below a limit, kg/m³, with mixing factor K. */
    public static double tolerableRelease(double airFlow, double limit, double mixingFactor) {
        return Require.notNegative(airFlow, "air flow") * Require.notNegative(limit, "limit") / mixing(mixingFactor);
    }

    private static double mixing(double factor) {
        if (!(factor >= 1)) {
            throw new IllegalArgumentException("a mixing factor is at least 1, not " + factor);
        }
        return factor;
    }
}

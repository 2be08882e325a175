package org.washwright.science;

/**
 * Film of water left after blowing off: {@code film (1 - share)}.
 *
 * <p>Film in kg, m³ or m, the answer in the same. Blowing off removes 70 to 95 % [common practice, no source]; a share
 * above 95 % is taken with a warning. Water in blind holes and laps stays.
 */
public final class BlowOff {

    private static final double MOST = 0.95;

    private BlowOff() {}

    /**
     * What is left of a film.
     *
     * @throws RefusedInput for a negative film or a share outside 0 to 1
     */
    public static Estimate left(double film, double removedShare) {
        Need.notNegative(film, "film before blowing off", "");
        Need.between(removedShare, 0, 1, "share blown off", "");
        return Estimate.of(film * (1 - removedShare))
                .warnIf(
                        removedShare > MOST,
                        () -> "Blowing off removes 70 to 95 % as a rule, not " + Need.text(removedShare * 100) + " %");
    }
}

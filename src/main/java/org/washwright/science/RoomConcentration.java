package org.washwright.science;

/** Share of a gas in a well-mixed room: steady c0 + q/Q, and its way there c = cs + (c1 − cs) exp(−Q t / V). */
public final class RoomConcentration {

    private RoomConcentration() {}

    /**
     * Share kept up in the end.
     *
     * @param fresh share in the fresh air
     * @param release gas set free, m³/s
     * @param airFlow fresh air, m³/s
     */
    public static double steady(double fresh, double release, double airFlow) {
        return Math.min(
                1,
                Require.notNegative(fresh, "share in fresh air")
                        + Require.notNegative(release, "release") / Require.positive(airFlow, "air flow"));
    }

    /** Share after a time, s, in a room of a volume, m³, that starts at another share. */
    public static double after(double start, double steady, double airFlow, double volume, double seconds) {
        double changes = Require.notNegative(airFlow, "air flow")
                * Require.notNegative(seconds, "time")
                / Require.positive(volume, "volume");
        return steady + (start - steady) * StrictMath.exp(-changes);
    }
}

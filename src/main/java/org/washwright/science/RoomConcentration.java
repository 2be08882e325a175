package org.washwright.science;

import java.util.OptionalDouble;

/**
 * Share of a gas or vapour in a ventilated, well mixed room: {@code V dC/dt = G + Q (Cin - C)}, hence {@code C = Cs + (C0 - Cs)
 * exp(-Q t / V)} and {@code Cs = Cin + G / Q} (ACGIH, Industrial Ventilation, chapter on general ventilation, purge and
 * build-up; formula sheet of the University of Toledo).
 *
 * <p>C shares of air by volume, G released gas in m³/s, Q air flow in m³/s, V volume of the room in m³, t in s. Holds for thin
 * mixtures: where the share comes above 10 % the gas itself pushes air out, and the value is given with a warning. Mixing is
 * taken as perfect; real rooms have corners: divide Q by a mixing factor. A heavy gas in a pit is not meant.
 */
public final class RoomConcentration {

    private static final double THIN = 0.1;

    private RoomConcentration() {}

    /**
     * Share in the end, without end above 1: then 1.
     *
     * @param supply share in the air that comes in
     * @param release m³/s of gas
     * @param airFlow m³/s
     * @throws RefusedInput for a share outside 0 to 1, a negative release or a flow that is not above zero
     */
    public static Estimate steady(double supply, double release, double airFlow) {
        Need.between(supply, 0, 1, "share in the supply air", "");
        Need.notNegative(release, "release of gas", "m³/s");
        Need.positive(airFlow, "air flow", "m³/s");
        return thin(supply + release / airFlow);
    }

    /**
     * Share after a time.
     *
     * @param start share at the start
     * @param supply share in the air that comes in
     * @param release m³/s of gas
     * @param airFlow m³/s; zero for a closed room
     * @param roomVolume m³
     * @param time s
     * @throws RefusedInput for a share outside 0 to 1, a negative quantity or a room without volume
     */
    public static Estimate after(
            double start, double supply, double release, double airFlow, double roomVolume, double time) {
        check(start, supply, release, roomVolume);
        Need.notNegative(airFlow, "air flow", "m³/s");
        Need.notNegative(time, "time", "s");
        if (airFlow == 0) {
            return thin(start + release * time / roomVolume);
        }
        double steady = supply + release / airFlow;
        return thin(steady + (start - steady) * StrictMath.exp(-airFlow * time / roomVolume));
    }

    /**
     * Share in a closed room after a volume of gas in m³ was let into it, such as dry ice or pellets that vanish.
     *
     * @throws RefusedInput for a share outside 0 to 1, a negative volume or a room without volume
     */
    public static Estimate afterRelease(double start, double gasVolume, double roomVolume) {
        check(start, 0, 0, roomVolume);
        Need.notNegative(gasVolume, "volume of gas", "m³");
        return thin(start + gasVolume / roomVolume);
    }

    /**
     * Time in s until a share is reached, rising or falling; empty when it never is.
     *
     * @throws RefusedInput as {@link #after}
     */
    public static OptionalDouble timeToReach(
            double target, double start, double supply, double release, double airFlow, double roomVolume) {
        check(start, supply, release, roomVolume);
        Need.between(target, 0, 1, "share to reach", "");
        Need.positive(airFlow, "air flow", "m³/s");
        double steady = supply + release / airFlow;
        double left = target == start ? 1 : (target - steady) / (start - steady);
        return left > 0 && left <= 1
                ? OptionalDouble.of(roomVolume / airFlow * StrictMath.log(1 / left))
                : OptionalDouble.empty();
    }

    private static void check(double start, double supply, double release, double roomVolume) {
        Need.between(start, 0, 1, "share at the start", "");
        Need.between(supply, 0, 1, "share in the supply air", "");
        Need.notNegative(release, "release of gas", "m³/s");
        Need.positive(roomVolume, "volume of the room", "m³");
    }

    private static Estimate thin(double share) {
        return Estimate.of(StrictMath.min(1, share))
                .warnIf(
                        share > THIN,
                        () -> "The purge formula holds for thin mixtures up to 10 % of the air, not for "
                                + Need.text(StrictMath.min(1, share) * 100) + " %: nobody may be in such air");
    }
}

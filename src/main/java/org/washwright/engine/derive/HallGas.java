package org.washwright.engine.derive;

import org.washwright.science.GasVolume;
import org.washwright.science.RoomConcentration;
import org.washwright.task.Group;

/** Share of carbon dioxide that a process keeps up in the air of the hall. */
final class HallGas implements Derivation {

    /** Carbon dioxide of outdoor air, about 420 ppm in the 2020s (NOAA global mean, from memory). */
    private static final double FRESH_AIR = 420e-6;

    @Override
    public String attribute() {
        return "hallGas";
    }

    @Override
    public String formula() {
        return "carbon dioxide of fresh air + gas set free ÷ fresh air";
    }

    @Override
    public String source() {
        return "balance of the hall; ideal gas";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.own("gasUse"), inputs.ref("gasUse"))
                .with(inputs.property("medium", "molarMass"), inputs.ref("medium.molarMass"))
                .with(inputs.of(Group.SITE, "airFlow"), "site/airFlow")
                .compute(x -> GasVolume.volume(x[0], x[1], Antoine.ROOM, Antoine.AIR)
                        .then(gas -> RoomConcentration.steady(FRESH_AIR, gas, x[2])));
    }
}

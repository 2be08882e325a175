package org.washwright.engine.derive;

import org.washwright.science.WaterVapourPressure;
import org.washwright.task.Value;

/** Vapour pressure of the medium at the hottest end of the process. */
final class HottestVapourPressure implements Derivation {

    @Override
    public String attribute() {
        return "vapourPressure";
    }

    @Override
    public String formula() {
        return "10^(A − B ÷ (T + C)) at the hottest bath; for water-based media that of water";
    }

    @Override
    public String source() {
        return "Antoine (1888) with the constants of the catalogue; IAPWS for water";
    }

    @Override
    public Computed compute(Inputs inputs) {
        if (inputs.property("medium", "waterBased").equals(Value.flag(true))) {
            return new Numbers().with(inputs.highest("temperature")).compute(x -> WaterVapourPressure.pressure(x[0]));
        }
        return Antoine.read(inputs)
                .with(inputs.highest("temperature"))
                .compute(x -> Antoine.of(x).pressure(x[Antoine.NUMBERS]));
    }
}

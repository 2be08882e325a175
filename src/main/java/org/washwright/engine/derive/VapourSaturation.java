package org.washwright.engine.derive;

import org.washwright.science.SaturatedVapour;

/** Share of vapour in saturated air at room temperature. */
final class VapourSaturation implements Derivation {

    @Override
    public String attribute() {
        return "saturation";
    }

    @Override
    public String formula() {
        return "vapour pressure at 20 °C ÷ pressure of the air";
    }

    @Override
    public String source() {
        return "Antoine (1888) with the constants of the catalogue";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Antoine.read(inputs)
                .compute(x ->
                        Antoine.of(x).pressure(Antoine.ROOM).then(p -> SaturatedVapour.moleFraction(p, Antoine.AIR)));
    }
}

package org.washwright.engine.derive;

import org.washwright.science.SaturatedVapour;

/** Vapour in saturated air at room temperature. */
final class VapourInSaturatedAir implements Derivation {

    @Override
    public String attribute() {
        return "saturatedAir";
    }

    @Override
    public String formula() {
        return "vapour pressure at 20 °C × molar mass ÷ (R × T)";
    }

    @Override
    public String source() {
        return "Antoine (1888) with the constants of the catalogue; ideal gas";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Antoine.read(inputs)
                .with(inputs.property("medium", "molarMass"), inputs.ref("medium.molarMass"))
                .compute(x -> Antoine.of(x)
                        .pressure(Antoine.ROOM)
                        .then(p ->
                                SaturatedVapour.massConcentration(p, Antoine.AIR, x[Antoine.NUMBERS], Antoine.ROOM)));
    }
}

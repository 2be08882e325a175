package org.washwright.engine.derive;

import org.washwright.science.CapillaryPressure;
import org.washwright.science.WaterSurfaceTension;

/** Capillary pressure by which rinse water is held in a hole or gap. */
final class WaterHold implements Derivation {

    @Override
    public String attribute() {
        return "waterHold";
    }

    @Override
    public String formula() {
        return "2 × surface tension of water × cos(wetting angle) ÷ radius";
    }

    @Override
    public String source() {
        return "Young and Laplace; IAPWS R1-76(2014) for water";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.own("diameter"), inputs.ref("diameter"))
                .with(inputs.assumption("rinse-temperature"))
                .with(inputs.assumption("wetting-angle"))
                .compute(x -> WaterSurfaceTension.surfaceTension(x[1])
                        .then(sigma -> CapillaryPressure.cylinder(sigma, x[2], x[0] / 2)));
    }
}

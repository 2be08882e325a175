package org.washwright.engine.derive;

import org.washwright.science.JurinRise;
import org.washwright.science.WaterDensity;
import org.washwright.science.WaterSurfaceTension;

/** Height to which a hole or gap holds rinse water against gravity. */
final class WaterRise implements Derivation {

    @Override
    public String attribute() {
        return "waterRise";
    }

    @Override
    public String formula() {
        return "2 × surface tension of water × cos(wetting angle) ÷ (density × g × radius)";
    }

    @Override
    public String source() {
        return "Jurin (1718); IAPWS R1-76(2014), Kell (1975) for water";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.own("diameter"), inputs.ref("diameter"))
                .with(inputs.assumption("rinse-temperature"))
                .with(inputs.assumption("wetting-angle"))
                .compute(x -> WaterSurfaceTension.surfaceTension(x[1])
                        .then(sigma ->
                                WaterDensity.density(x[1]).then(rho -> JurinRise.height(sigma, x[2], rho, x[0] / 2))));
    }
}

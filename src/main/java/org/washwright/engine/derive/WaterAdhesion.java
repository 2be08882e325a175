package org.washwright.engine.derive;

import org.washwright.science.YoungDupre;

/** Work of adhesion of water on a surface with this contact angle. */
final class WaterAdhesion implements Derivation {

    /** Surface tension of water at 20 °C, N/m; IAPWS R1-76(2014) gives 72.74 mN/m, tables of contact angles use 72.8. */
    private static final double WATER = 0.0728;

    @Override
    public String attribute() {
        return "adhesion";
    }

    @Override
    public String formula() {
        return "surface tension of water × (1 + cos(contact angle))";
    }

    @Override
    public String source() {
        return "Young and Dupré; surface tension of water at 20 °C";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.own("contactAngle"), inputs.ref("contactAngle"))
                .compute(x -> YoungDupre.workOfAdhesion(WATER, Math.min(x[0], Math.PI)));
    }
}

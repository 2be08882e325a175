package org.washwright.engine.derive;

import org.washwright.science.OwensWendt;
import org.washwright.science.OwensWendt.Measured;

/** Surface energy that a surface with these contact angles of water and diiodomethane has. */
final class DemandedSurfaceEnergy implements Derivation {

    @Override
    public String attribute() {
        return "surfaceEnergy";
    }

    @Override
    public String formula() {
        return "Owens and Wendt with the liquids of Ström and others";
    }

    @Override
    public String source() {
        return "Owens and Wendt, J. Appl. Polym. Sci. 13 (1969) 1741";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.own("contactAngle"), inputs.ref("contactAngle"))
                .with(inputs.own("contactAngleDiiodomethane"), inputs.ref("contactAngleDiiodomethane"))
                .compute(x -> OwensWendt.solid(
                                new Measured(OwensWendt.WATER, Math.min(x[0], Math.PI)),
                                new Measured(OwensWendt.DIIODOMETHANE, Math.min(x[1], Math.PI)))
                        .total());
    }
}

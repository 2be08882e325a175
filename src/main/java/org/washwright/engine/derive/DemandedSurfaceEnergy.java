package org.washwright.engine.derive;

import org.washwright.science.Estimate;
import org.washwright.science.OwensWendt;
import org.washwright.science.SurfaceEnergy;

/** Surface energy that a surface with these contact angles of water and diiodomethane has. */
final class DemandedSurfaceEnergy implements Derivation {

    /** Liquids as in Ström, Fredriksson and Stenius (1987), N/m: dispersive and polar part. */
    private static final SurfaceEnergy WATER = new SurfaceEnergy(0.0218, 0.0510);

    private static final SurfaceEnergy DIIODOMETHANE = new SurfaceEnergy(0.0508, 0);

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
                .compute(x -> energy(Math.min(x[0], Math.PI), Math.min(x[1], Math.PI)));
    }

    private static Estimate energy(double water, double diiodomethane) {
        OwensWendt.Solid solid = OwensWendt.solid(
                new OwensWendt.Measured(WATER, water), new OwensWendt.Measured(DIIODOMETHANE, diiodomethane));
        return new Estimate(solid.energy().total(), solid.warnings());
    }
}

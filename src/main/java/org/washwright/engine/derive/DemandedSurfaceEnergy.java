package org.washwright.engine.derive;

import java.util.function.ToDoubleFunction;
import org.washwright.science.Estimate;
import org.washwright.science.OwensWendt;
import org.washwright.science.SurfaceEnergy;

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

    /**
     * Each part rises or falls steadily with either angle, their sum does not: so the parts are bounded one by one, which is
     * exact for angles that are known and somewhat wide for ranges.
     */
    @Override
    public Computed compute(Inputs inputs) {
        Computed dispersive = part(inputs, SurfaceEnergy::dispersive);
        Computed polar = part(inputs, SurfaceEnergy::polar);
        return new Numbers().with(dispersive).with(polar).compute(x -> Estimate.of(x[0] + x[1]));
    }

    private static Computed part(Inputs inputs, ToDoubleFunction<SurfaceEnergy> part) {
        return new Numbers()
                .with(inputs.own("contactAngle"), inputs.ref("contactAngle"))
                .with(inputs.own("contactAngleDiiodomethane"), inputs.ref("contactAngleDiiodomethane"))
                .compute(x -> {
                    OwensWendt.Solid solid = OwensWendt.solid(
                            new OwensWendt.Measured(OwensWendt.WATER, Math.min(x[0], Math.PI)),
                            new OwensWendt.Measured(OwensWendt.DIIODOMETHANE, Math.min(x[1], Math.PI)));
                    return new Estimate(part.applyAsDouble(solid.energy()), solid.warnings());
                });
    }
}

package org.washwright.engine.contact;

import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.science.OwensWendt;
import org.washwright.science.SurfaceEnergy;

/** Contact angle of the medium on a material of known surface energy. */
final class MediumContactAngle implements ContactFormula {

    @Override
    public String attribute() {
        return "contactAngle";
    }

    @Override
    public String formula() {
        return "cos θ = 2 (√(γSd γLd) + √(γSp γLp)) ÷ γL − 1";
    }

    @Override
    public String source() {
        return "Owens and Wendt, J. Appl. Polym. Sci. 13 (1969) 1741";
    }

    @Override
    public Computed compute(Meeting meeting) {
        return new Numbers()
                .with(
                        meeting.process("medium.surfaceTensionDispersive"),
                        meeting.processRef("medium.surfaceTensionDispersive"))
                .with(meeting.process("medium.surfaceTensionPolar"), meeting.processRef("medium.surfaceTensionPolar"))
                .with(
                        meeting.other("substrate.surfaceEnergyDispersive"),
                        meeting.otherRef("substrate.surfaceEnergyDispersive"))
                .with(meeting.other("substrate.surfaceEnergyPolar"), meeting.otherRef("substrate.surfaceEnergyPolar"))
                .compute(x -> OwensWendt.contactAngle(new SurfaceEnergy(x[2], x[3]), new SurfaceEnergy(x[0], x[1])));
    }
}

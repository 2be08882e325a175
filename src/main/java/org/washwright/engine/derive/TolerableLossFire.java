package org.washwright.engine.derive;

import org.washwright.science.ExplosionDilution;
import org.washwright.task.Group;

/** Vapour that the hall's fresh air carries off while it stays below a quarter of the lower explosion limit. */
final class TolerableLossFire implements Derivation {

    @Override
    public String attribute() {
        return "tolerableLossFire";
    }

    @Override
    public String formula() {
        return "fresh air × explosion limit ÷ 4 × molar mass ÷ molar volume";
    }

    @Override
    public String source() {
        return "ACGIH, Industrial Ventilation, dilution for fire safety (from memory)";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.of(Group.SITE, "airFlow"), "site/airFlow")
                .with(inputs.property("medium", "lowerExplosionLimit"), inputs.ref("medium.lowerExplosionLimit"))
                .with(inputs.property("medium", "molarMass"), inputs.ref("medium.molarMass"))
                .compute(x -> ExplosionDilution.permissibleMassRate(
                        x[0], x[2], x[1], ExplosionDilution.STEADY, Antoine.ROOM, Antoine.ROOM, Antoine.AIR));
    }
}

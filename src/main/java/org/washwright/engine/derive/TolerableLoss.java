package org.washwright.engine.derive;

import org.washwright.science.DilutionAir;
import org.washwright.task.Group;

/** Vapour that the hall's fresh air carries off while it stays below the exposure limit. */
final class TolerableLoss implements Derivation {

    @Override
    public String attribute() {
        return "tolerableLoss";
    }

    @Override
    public String formula() {
        return "fresh air × exposure limit ÷ mixing factor (assumption)";
    }

    @Override
    public String source() {
        return "ACGIH, Industrial Ventilation, dilution ventilation (from memory); University of Toledo formula sheet";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.of(Group.SITE, "airFlow"), "site/airFlow")
                .with(inputs.property("medium", "molarMass"), inputs.ref("medium.molarMass"))
                .with(inputs.own("exposureShare"), inputs.ref("exposureShare"))
                .with(inputs.assumption("mixing-factor"))
                .compute(x -> DilutionAir.permissibleMassRate(x[0], x[1], x[2], x[3], Antoine.ROOM, Antoine.AIR));
    }
}

package org.washwright.engine.derive;

import org.washwright.science.DilutionAir;
import org.washwright.science.Estimate;
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
                .with(inputs.property("medium", "exposureLimit"), inputs.ref("medium.exposureLimit"))
                .with(inputs.assumption("mixing-factor"))
                .compute(x -> Estimate.of(DilutionAir.tolerableRelease(x[0], x[1], x[2])));
    }
}

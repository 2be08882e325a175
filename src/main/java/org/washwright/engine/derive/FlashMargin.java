package org.washwright.engine.derive;

import org.washwright.science.Estimate;

/** How far the flash point lies above the hottest bath. */
final class FlashMargin implements Derivation {

    @Override
    public String attribute() {
        return "flashMargin";
    }

    @Override
    public String formula() {
        return "flash point − hottest bath temperature";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.property("medium", "flashPoint"), inputs.ref("medium.flashPoint"))
                .with(inputs.highest("temperature"))
                .compute(x -> Estimate.of(x[0] - x[1]));
    }
}

package org.washwright.engine.contact;

import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.science.Estimate;

/** How far the hottest bath lies above the melting point of a soil. */
final class MeltingMargin implements ContactFormula {

    @Override
    public String attribute() {
        return "meltingMargin";
    }

    @Override
    public String formula() {
        return "hottest bath temperature − melting point";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Meeting meeting) {
        return new Numbers()
                .with(meeting.highest("temperature"))
                .with(meeting.other("kind.meltingPoint"), meeting.otherRef("kind.meltingPoint"))
                .compute(x -> Estimate.of(x[0] - x[1]));
    }
}

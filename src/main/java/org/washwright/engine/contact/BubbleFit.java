package org.washwright.engine.contact;

import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.science.Estimate;
import org.washwright.science.MinnaertBubble;

/** Resonant cavitation bubble over the width of a gap, at the highest frequency of the process. */
final class BubbleFit implements ContactFormula {

    private static final double AIR = 101_325;
    private static final double WATER = 998;

    @Override
    public String attribute() {
        return "bubbleFit";
    }

    @Override
    public String formula() {
        return "2 × resonant radius ÷ width";
    }

    @Override
    public String source() {
        return "Minnaert, Phil. Mag. 16 (1933) 235; water at 1 atm";
    }

    @Override
    public Computed compute(Meeting meeting) {
        return new Numbers()
                .with(meeting.highest("frequency"))
                .with(meeting.other("diameter"), meeting.otherRef("diameter"))
                .compute(x -> MinnaertBubble.radius(x[0], AIR, WATER).then(r -> Estimate.of(2 * r / x[1])));
    }
}

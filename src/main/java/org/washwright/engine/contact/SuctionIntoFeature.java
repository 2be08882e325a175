package org.washwright.engine.contact;

import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.science.CapillaryPressure;

/** Capillary pressure that draws the medium into a hole or gap. */
final class SuctionIntoFeature implements ContactFormula {

    @Override
    public String attribute() {
        return "capillaryPressure";
    }

    @Override
    public String formula() {
        return "2 × surface tension × cos(wetting angle) ÷ radius";
    }

    @Override
    public String source() {
        return "Young and Laplace";
    }

    @Override
    public Computed compute(Meeting meeting) {
        return Wetting.tension(meeting)
                .with(meeting.assumption("wetting-angle"))
                .with(meeting.other("diameter"), meeting.otherRef("diameter"))
                .compute(x -> CapillaryPressure.cylinder(x[0], x[1], x[2] / 2));
    }
}

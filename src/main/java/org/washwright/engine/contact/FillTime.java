package org.washwright.engine.contact;

import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.science.WashburnPenetration;

/** Time in which the medium draws itself into a hole or gap to its end. */
final class FillTime implements ContactFormula {

    @Override
    public String attribute() {
        return "fillTime";
    }

    @Override
    public String formula() {
        return "2 × viscosity × depth² ÷ (radius × surface tension × cos(wetting angle))";
    }

    @Override
    public String source() {
        return "Washburn, Phys. Rev. 17 (1921) 273";
    }

    @Override
    public Computed compute(Meeting meeting) {
        return Wetting.tension(meeting)
                .with(meeting.assumption("wetting-angle"))
                .with(meeting.other("diameter"), meeting.otherRef("diameter"))
                .with(meeting.other("depth"), meeting.otherRef("depth"))
                .with(meeting.process("medium.viscosity"), meeting.processRef("medium.viscosity"))
                .compute(x -> WashburnPenetration.time(x[2] / 2, x[0], x[1], x[4], x[3]));
    }
}

package org.washwright.engine.contact;

import org.washwright.engine.contact.ContactFormula.Meeting;
import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.science.JasperSurfaceTension;
import org.washwright.task.Value;

/**
 * Surface tension of a medium: for water-based media an assumption of the edition; else on the line that the catalogue gives by
 * its values at 0 and 50 °C, at the hottest bath; else the one value that the catalogue gives.
 */
final class Wetting {

    private static final double LOWEST = 273.15;
    private static final double HIGHEST = 343.15;
    private static final double BETWEEN = 50;

    private Wetting() {}

    /** Reads the surface tension of a process's medium. */
    static Numbers tension(Meeting meeting) {
        if (meeting.process("medium.waterBased").equals(Value.flag(true))) {
            return new Numbers().with(meeting.assumption("bath-surface-tension"));
        }
        Computed warm = warm(meeting);
        return warm.value() instanceof Value.NotApplicable
                ? new Numbers()
                        .with(meeting.process("medium.surfaceTension"), meeting.processRef("medium.surfaceTension"))
                : new Numbers().with(warm);
    }

    private static Computed warm(Meeting meeting) {
        return new Numbers()
                .with(meeting.process("medium.surfaceTensionAt0"), meeting.processRef("medium.surfaceTensionAt0"))
                .with(meeting.process("medium.surfaceTensionAt50"), meeting.processRef("medium.surfaceTensionAt50"))
                .with(meeting.highest("temperature"))
                .compute(x ->
                        new JasperSurfaceTension(x[0], (x[0] - x[1]) / BETWEEN, LOWEST, HIGHEST).surfaceTension(x[2]));
    }
}

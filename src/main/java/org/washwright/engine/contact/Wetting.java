package org.washwright.engine.contact;

import org.washwright.engine.contact.ContactFormula.Meeting;
import org.washwright.engine.derive.Numbers;
import org.washwright.task.Value;

/** Surface tension of a medium: that of the catalogue, for water-based media an assumption of the edition. */
final class Wetting {

    private Wetting() {}

    /** Reads the surface tension of a process's medium. */
    static Numbers tension(Meeting meeting) {
        return meeting.process("medium.waterBased").equals(Value.flag(true))
                ? new Numbers().with(meeting.assumption("bath-surface-tension"))
                : new Numbers()
                        .with(meeting.process("medium.surfaceTension"), meeting.processRef("medium.surfaceTension"));
    }
}

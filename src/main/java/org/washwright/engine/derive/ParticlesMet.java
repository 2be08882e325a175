package org.washwright.engine.derive;

import org.washwright.science.ComponentCleanlinessCode;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Whether the particles found before cleaning already meet the agreed code. */
final class ParticlesMet implements Derivation {

    @Override
    public String attribute() {
        return "particlesMet";
    }

    @Override
    public String formula() {
        return "code found now compared with code agreed, class by class";
    }

    @Override
    public String source() {
        return "ISO 16232:2018, levels and classes";
    }

    @Override
    public Computed compute(Inputs inputs) {
        String agreed = inputs.code("particleCode");
        String found = inputs.codeOf(Group.PRECEDING, "particleCode");
        String[] refs = {inputs.ref("particleCode"), "preceding/particleCode"};
        boolean none = inputs.given("particleCode") instanceof Value.NotApplicable
                || inputs.of(Group.PRECEDING, "particleCode") instanceof Value.NotApplicable;
        if (agreed.isEmpty() || found.isEmpty()) {
            return Computed.of(none ? Value.NOT_APPLICABLE : Value.UNKNOWN, refs);
        }
        return Computed.of(
                switch (ComponentCleanlinessCode.meets(Codes.component(found), Codes.component(agreed))) {
                    case YES -> Value.flag(true);
                    case NO -> Value.flag(false);
                    case UNDECIDED -> Value.UNKNOWN;
                },
                refs);
    }
}

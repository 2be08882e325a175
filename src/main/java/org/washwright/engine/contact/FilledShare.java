package org.washwright.engine.contact;

import java.util.List;
import java.util.Optional;
import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.quantity.Span;
import org.washwright.science.CapillaryPressure;
import org.washwright.science.TrappedAir;
import org.washwright.science.VacuumFilling;
import org.washwright.science.WaterVapourPressure;
import org.washwright.task.Value;

/**
 * Share of a dead end that fills with liquid: under vacuum by what the pump leaves, in an open bath by what the pressure of
 * the bath squeezes when the mouth points down; any other way round it fills.
 */
final class FilledShare implements ContactFormula {

    private static final double AIR = 101_325;
    private static final String FILLS = "mouth.fills";

    @Override
    public String attribute() {
        return "filledShare";
    }

    @Override
    public String formula() {
        return "mouth down: 1 − p ÷ (p + ρ g h + capillary pressure); evacuated: 1 − (p vacuum − p vapour) ÷ (p air − p vapour)";
    }

    @Override
    public String source() {
        return "law of Boyle and Mariotte";
    }

    @Override
    public Computed compute(Meeting meeting) {
        Value deadEnd = meeting.other("kind.deadEnd");
        if (!deadEnd.equals(Value.flag(true))) {
            Value open = deadEnd instanceof Value.NotApplicable ? Value.NOT_APPLICABLE : Value.UNKNOWN;
            return computed(
                    deadEnd.equals(Value.flag(false)) ? Value.number(1) : open, meeting.otherRef("kind.deadEnd"));
        }
        if (!(meeting.process("technique.chamberPressure") instanceof Value.NotApplicable)) {
            return evacuated(meeting);
        }
        if (!meeting.process("technique.chamber").equals(Value.flag(true))) {
            return computed(Value.NOT_APPLICABLE, meeting.processRef("technique.chamber"));
        }
        Value fills = meeting.other(FILLS);
        Computed down = mouthDown(meeting);
        if (fills.equals(Value.flag(false))) {
            return down;
        }
        if (fills.equals(Value.flag(true))) {
            return computed(Value.number(1), meeting.otherRef(FILLS));
        }
        Value either = down.value() instanceof Value.Number n
                ? new Value.Number(new Span(n.span().low(), 1))
                : Value.UNKNOWN;
        return computed(either, meeting.otherRef("mouth"), meeting.otherRef("diameter"));
    }

    private static Computed computed(Value value, String... refs) {
        return new Computed(value, List.of(refs), List.of(), Optional.empty(), List.of());
    }

    private static Computed mouthDown(Meeting meeting) {
        return Wetting.tension(meeting)
                .with(meeting.assumption("wetting-angle"))
                .with(meeting.assumption("immersion-depth"))
                .with(meeting.other("diameter"), meeting.otherRef("diameter"))
                .compute(x -> CapillaryPressure.cylinder(x[0], x[1], x[3] / 2)
                        .then(pressure -> TrappedAir.filledShare(WATER_DENSITY, x[2], pressure, AIR)));
    }

    /** Density of the bath, kg/m³; that of solvents differs by half, which moves the share by less than three in a hundred. */
    private static final double WATER_DENSITY = 998;

    private static Computed evacuated(Meeting meeting) {
        Numbers numbers = new Numbers()
                .with(meeting.process("technique.chamberPressure"), meeting.processRef("technique.chamberPressure"));
        if (meeting.process("medium.waterBased").equals(Value.flag(true))) {
            return numbers.with(meeting.highest("temperature"))
                    .compute(x -> WaterVapourPressure.pressure(x[1])
                            .then(vapour -> VacuumFilling.filledShare(x[0], vapour, AIR)));
        }
        return numbers.compute(x -> VacuumFilling.filledShare(x[0], 0, AIR));
    }
}

package org.washwright.engine.contact;

import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.science.Estimate;
import org.washwright.science.PressureCycling;

/** Pressure cycles until a hundredth of the old liquid is left in a hole. */
final class CyclesToExchange implements ContactFormula {

    private static final double LEFT = 0.01;

    @Override
    public String attribute() {
        return "cyclesToExchange";
    }

    @Override
    public String formula() {
        return "ln 0.01 ÷ ln(1 − share exchanged in a cycle)";
    }

    @Override
    public String source() {
        return "geometric dilution";
    }

    @Override
    public Computed compute(Meeting meeting) {
        return new Numbers()
                .with(meeting.process("technique.exchangedPerCycle"), meeting.processRef("technique.exchangedPerCycle"))
                .compute(x -> Estimate.of(cycles(x[0])));
    }

    /** Where a cycle exchanges nothing, no number of them is enough. */
    private static double cycles(double exchanged) {
        var cycles = PressureCycling.cyclesToReach(exchanged, LEFT);
        return cycles.isPresent() ? cycles.getAsLong() : Double.POSITIVE_INFINITY;
    }
}

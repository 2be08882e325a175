package org.washwright.engine.contact;

import java.util.List;
import java.util.Optional;
import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.engine.derive.Numbers;
import org.washwright.science.Estimate;
import org.washwright.task.Value;

/** How far the hottest bath lies below what a material or a component stands. */
final class TemperatureMargin implements ContactFormula {

    private static final String OF_MATERIAL = "substrate.serviceTemperature";
    private static final String OF_COMPONENT = "highestTemperature";

    @Override
    public String attribute() {
        return "temperatureMargin";
    }

    @Override
    public String formula() {
        return "lowest of the temperatures it stands − hottest bath temperature";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Meeting meeting) {
        Computed material = margin(meeting, OF_MATERIAL);
        Computed component = margin(meeting, OF_COMPONENT);
        if (component.value() instanceof Value.NotApplicable) {
            return material;
        }
        if (material.value() instanceof Value.NotApplicable) {
            return component;
        }
        Value both = material.value() instanceof Value.Number a && component.value() instanceof Value.Number b
                ? new Value.Number(new org.washwright.quantity.Span(
                        Math.min(a.span().low(), b.span().low()),
                        Math.min(a.span().high(), b.span().high())))
                : Value.UNKNOWN;
        return new Computed(
                both,
                List.of(meeting.otherRef(OF_MATERIAL), meeting.otherRef(OF_COMPONENT)),
                List.of(),
                Optional.empty(),
                List.of());
    }

    private static Computed margin(Meeting meeting, String field) {
        return new Numbers()
                .with(meeting.other(field), meeting.otherRef(field))
                .with(meeting.highest("temperature"))
                .compute(x -> Estimate.of(x[0] - x[1]));
    }
}

package org.washwright.plant;

import org.washwright.assessment.Outcome;
import org.washwright.task.Value;

/** What the facts of a task say of its part and lot. */
record PartFacts(Value rate, Value annualQuantity, Value mass, Value area, Value length, Value charging) {

    static PartFacts of(Outcome outcome) {
        return new PartFacts(
                field(outcome, "part", "rate"),
                field(outcome, "part", "annualQuantity"),
                field(outcome, "part", "mass"),
                field(outcome, "part", "wettedArea"),
                field(outcome, "part", "largestDimension"),
                field(outcome, "lot", "charging"));
    }

    private static Value field(Outcome outcome, String fact, String field) {
        return outcome.facts()
                .fact(fact)
                .flatMap(f -> f.type().field(field).map(f::value))
                .orElse(Value.UNKNOWN);
    }
}

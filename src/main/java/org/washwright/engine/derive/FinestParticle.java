package org.washwright.engine.derive;

import java.util.OptionalDouble;
import org.washwright.task.Value;

/** Smallest particle size that an agreed component cleanliness code counts. */
final class FinestParticle implements Derivation {

    @Override
    public String attribute() {
        return "finestParticle";
    }

    @Override
    public String formula() {
        return "lower bound of the smallest size class that the code limits";
    }

    @Override
    public String source() {
        return "ISO 16232:2018, size classes";
    }

    @Override
    public Computed compute(Inputs inputs) {
        String code = inputs.code("particleCode");
        Value given = inputs.given("particleCode");
        OptionalDouble size = code.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Codes.component(code).smallestCountedSize());
        return new Limits().with(code, size, given, inputs.ref("particleCode")).lowest();
    }
}

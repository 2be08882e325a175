package org.washwright.engine.derive;

import org.washwright.science.ComponentCleanlinessCode;
import org.washwright.task.Value;

/** Smallest particle size that an agreed component cleanliness code forbids. */
final class LargestParticle implements Derivation {

    @Override
    public String attribute() {
        return "largestParticle";
    }

    @Override
    public String formula() {
        return "lower bound of the smallest size class whose level is 00";
    }

    @Override
    public String source() {
        return "ISO 16232:2018, size classes";
    }

    @Override
    public Computed compute(Inputs inputs) {
        String ref = inputs.ref("particleCode");
        String code = inputs.code("particleCode");
        if (code.isEmpty()) {
            Value given = inputs.given("particleCode");
            return Computed.of(given instanceof Value.NotApplicable ? given : Value.UNKNOWN, ref);
        }
        try {
            var size = ComponentCleanlinessCode.parse(code).smallestForbiddenSize();
            return Computed.of(size.isPresent() ? Value.number(size.getAsDouble()) : Value.NOT_APPLICABLE, ref);
        } catch (ComponentCleanlinessCode.BadCode e) {
            throw new IllegalStateException("the reader lets only sound codes pass, not " + code, e);
        }
    }
}

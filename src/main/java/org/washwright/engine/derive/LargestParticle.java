package org.washwright.engine.derive;

import org.washwright.task.Value;

/** Smallest particle size that is forbidden: by the agreed code, by a size, or by a product cleanliness level, whichever is stricter. */
final class LargestParticle implements Derivation {

    @Override
    public String attribute() {
        return "largestParticle";
    }

    @Override
    public String formula() {
        return "strictest of: lower bound of the smallest class at level 00; the size given; the size of which one particle is allowed";
    }

    @Override
    public String source() {
        return "ISO 16232:2018, size classes; IEST-STD-CC1246D";
    }

    @Override
    public Computed compute(Inputs inputs) {
        String component = inputs.code("particleCode");
        String product = inputs.code("productLevel");
        Value size = inputs.own("particleLimit");
        return new Limits()
                .with(component, Codes.forbidden(component), inputs.given("particleCode"), inputs.ref("particleCode"))
                .with(size, inputs.ref("particleLimit"))
                .with(product, Codes.productParticle(product), inputs.given("productLevel"), inputs.ref("productLevel"))
                .lowest();
    }
}

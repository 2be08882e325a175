package org.washwright.engine.derive;

import org.washwright.task.Group;

/** Boundary layer of the sound over the smallest particle that is counted. */
final class LayerOverParticle implements Derivation {

    @Override
    public String attribute() {
        return "layerOverParticle";
    }

    @Override
    public String formula() {
        return "boundary layer ÷ smallest particle counted";
    }

    @Override
    public String source() {
        return "Qi and Brereton, IEEE UFFC 42 (1995) 619";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.quotient(inputs.own("boundaryLayer"), inputs.of(Group.DEMAND, "finestParticle")),
                inputs.ref("boundaryLayer"),
                "demand/finestParticle");
    }
}

package org.washwright.engine.derive;

import org.washwright.science.DiffusionTime;

/** Time in which soil or cleaner trades places along the depth of a hole by diffusion alone. */
final class FeatureDiffusion implements Derivation {

    @Override
    public String attribute() {
        return "diffusionTime";
    }

    @Override
    public String formula() {
        return "depth² ÷ diffusivity (assumption)";
    }

    @Override
    public String source() {
        return "order of magnitude of Einstein, Ann. Phys. 17 (1905) 549";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.own("depth"), inputs.ref("depth"))
                .with(inputs.assumption("diffusivity"))
                .compute(x -> DiffusionTime.time(x[0], x[1]));
    }
}

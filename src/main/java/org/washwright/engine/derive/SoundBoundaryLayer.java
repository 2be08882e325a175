package org.washwright.engine.derive;

import org.washwright.science.AcousticBoundaryLayer;
import org.washwright.science.WaterViscosity;
import org.washwright.task.Value;

/** Thickness of the layer that sound leaves at rest on the part, at the highest frequency of the process. */
final class SoundBoundaryLayer implements Derivation {

    @Override
    public String attribute() {
        return "boundaryLayer";
    }

    @Override
    public String formula() {
        return "√(viscosity ÷ (π × density × frequency)) at the hottest bath";
    }

    @Override
    public String source() {
        return "Stokes layer; Qi and Brereton, IEEE UFFC 42 (1995) 619";
    }

    @Override
    public Computed compute(Inputs inputs) {
        if (inputs.property("medium", "waterBased").equals(Value.flag(true))) {
            return new Numbers()
                    .with(inputs.highest("temperature"))
                    .with(inputs.highest("frequency"))
                    .compute(x -> WaterViscosity.kinematic(x[0]).then(nu -> AcousticBoundaryLayer.thickness(nu, x[1])));
        }
        return new Numbers()
                .with(inputs.property("medium", "viscosity"), inputs.ref("medium.viscosity"))
                .with(inputs.property("medium", "density"), inputs.ref("medium.density"))
                .with(inputs.highest("frequency"))
                .compute(x -> AcousticBoundaryLayer.thickness(x[0] / x[1], x[2]));
    }
}

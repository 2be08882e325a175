package org.washwright.engine.derive;

import org.washwright.science.VapourConcentration;

/** Exposure limit as a share of the air. */
final class ExposureShare implements Derivation {

    /** Exposure limits are converted at 25 °C, K. */
    private static final double CONVENTION = 298.15;

    @Override
    public String attribute() {
        return "exposureShare";
    }

    @Override
    public String formula() {
        return "limit in mg/m³ × 24.45 ÷ molar mass, at 25 °C";
    }

    @Override
    public String source() {
        return "ideal gas; the convention of exposure limits";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return new Numbers()
                .with(inputs.property("medium", "exposureLimit"), inputs.ref("medium.exposureLimit"))
                .with(inputs.property("medium", "molarMass"), inputs.ref("medium.molarMass"))
                .compute(x -> VapourConcentration.moleFraction(x[0], x[1], CONVENTION, Antoine.AIR));
    }
}

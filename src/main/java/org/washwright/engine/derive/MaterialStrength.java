package org.washwright.engine.derive;

import java.util.List;
import org.washwright.science.HardnessConversion;

/** Strength of steel from whichever of tensile strength, Rockwell C and Vickers hardness is given. */
final class MaterialStrength implements Derivation {

    private static final List<Hardness.Reading> READINGS = List.of(
            new Hardness.Reading("tensileStrength", Hardness.DIRECT, 0, 0, Double.POSITIVE_INFINITY),
            new Hardness.Reading("hardness", HardnessConversion::strengthOfRockwell, 0, 20, 60),
            new Hardness.Reading(
                    "vickersHardness",
                    hv -> HardnessConversion.strengthOfRockwell(HardnessConversion.rockwellOfVickers(hv)),
                    0,
                    238,
                    697));

    @Override
    public String attribute() {
        return "strength";
    }

    @Override
    public String formula() {
        return "given strength, or strength of steel of this hardness, within 5 %";
    }

    @Override
    public String source() {
        return "ISO 18265:2013, table A.1; ASTM E140, table 1 (from memory)";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Hardness.combine(inputs, READINGS, "strength");
    }
}

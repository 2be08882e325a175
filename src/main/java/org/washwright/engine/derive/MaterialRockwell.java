package org.washwright.engine.derive;

import java.util.List;
import org.washwright.science.HardnessConversion;

/** Rockwell C hardness of steel from whichever of Rockwell C, Vickers hardness and tensile strength is given. */
final class MaterialRockwell implements Derivation {

    private static final double LOWEST = Double.NEGATIVE_INFINITY;
    private static final List<Hardness.Reading> READINGS = List.of(
            new Hardness.Reading("hardness", Hardness.DIRECT, LOWEST, LOWEST, Double.POSITIVE_INFINITY),
            new Hardness.Reading("vickersHardness", HardnessConversion::rockwellOfVickers, LOWEST, 238, 697),
            new Hardness.Reading("tensileStrength", HardnessConversion::rockwellOfStrength, LOWEST, 770e6, 2180e6));

    @Override
    public String attribute() {
        return "rockwell";
    }

    @Override
    public String formula() {
        return "given Rockwell hardness, or that of steel of this Vickers hardness or strength, within 5 %";
    }

    @Override
    public String source() {
        return "ASTM E140, table 1; ISO 18265:2013, table A.1 (from memory)";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Hardness.combine(inputs, READINGS, "hardness");
    }
}

package org.washwright.science;

/**
 * Surface energy of a solid or surface tension of a liquid in two parts.
 *
 * @param dispersive part by dispersion forces in J/m² (= N/m)
 * @param polar part by polar forces in J/m²
 */
public record SurfaceEnergy(double dispersive, double polar) {

    /**
     * Checks the parts.
     *
     * @throws RefusedInput for a negative part
     */
    public SurfaceEnergy {
        Need.notNegative(dispersive, "dispersive part of the surface energy", "J/m²");
        Need.notNegative(polar, "polar part of the surface energy", "J/m²");
    }

    /** Sum of the parts in J/m². */
    public double total() {
        return dispersive + polar;
    }
}

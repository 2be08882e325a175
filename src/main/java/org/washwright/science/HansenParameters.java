package org.washwright.science;

import java.util.List;

/**
 * Solubility parameters of a solvent, soil or polymer (Hansen 1967; Hansen Solubility Parameters, A User's Handbook, 2nd edition,
 * 2007): total {@code d = sqrt(dD^2 + dP^2 + dH^2)}, blends by share of volume {@code d = sum(v_i d_i)}.
 *
 * <p>For liquids and amorphous solids near 25 °C; sets of different authors differ by 1 MPa^0.5 and more. A parameter
 * below 0 is refused. A table in (cal/cm³)^0.5 has to be multiplied by 2045.5 to give Pa^0.5, one in MPa^0.5 by 1000; {@link
 * HansenDistance} warns where that seems forgotten.
 *
 * @param dispersion dD in Pa^0.5
 * @param polar dP in Pa^0.5
 * @param hydrogen dH in Pa^0.5, hydrogen bonds
 */
public record HansenParameters(double dispersion, double polar, double hydrogen) {

    /**
     * A part of a blend.
     *
     * @param parameters of the pure liquid
     * @param volume its volume, in any unit common to the parts
     */
    public record Part(HansenParameters parameters, double volume) {
        /**
         * Checks the volume.
         *
         * @throws RefusedInput for a negative volume
         */
        public Part {
            Need.notNegative(volume, "volume of a part of the blend", "");
        }
    }

    /**
     * Checks the parameters.
     *
     * @throws RefusedInput for a negative one
     */
    public HansenParameters {
        Need.notNegative(dispersion, "dispersion parameter", "Pa^0.5");
        Need.notNegative(polar, "polar parameter", "Pa^0.5");
        Need.notNegative(hydrogen, "hydrogen bonding parameter", "Pa^0.5");
    }

    /** From a table in MPa^0.5. */
    public static HansenParameters ofMegapascal(double dispersion, double polar, double hydrogen) {
        return new HansenParameters(dispersion * 1e3, polar * 1e3, hydrogen * 1e3);
    }

    /** Total (Hildebrand) parameter in Pa^0.5. */
    public double total() {
        return StrictMath.sqrt(dispersion * dispersion + polar * polar + hydrogen * hydrogen);
    }

    /**
     * A blend, each part by its share of the volume.
     *
     * @throws RefusedInput when there is no volume at all
     */
    public static HansenParameters blend(List<Part> parts) {
        double whole = Need.positive(parts.stream().mapToDouble(Part::volume).sum(), "volume of the blend", "");
        double d = 0;
        double p = 0;
        double h = 0;
        for (Part part : parts) {
            double share = part.volume() / whole;
            d += share * part.parameters().dispersion();
            p += share * part.parameters().polar();
            h += share * part.parameters().hydrogen();
        }
        return new HansenParameters(d, p, h);
    }
}

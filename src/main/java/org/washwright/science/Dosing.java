package org.washwright.science;

/**
 * Product that brings a bath back to strength: {@code v = V (c2 - c1) / (cp - c2)}, by the balance of the product; the
 * bath grows by v.
 *
 * <p>V and v in m³; shares by volume: c1 in the bath now, c2 wanted, cp in the product (1 for a neat one). The rule of
 * thumb {@code V (c2 - c1)} doses too little. A bath that already is stronger gets none, with a warning. Volumes are
 * taken to add up.
 */
public final class Dosing {

    private Dosing() {}

    /**
     * Product in m³.
     *
     * @throws RefusedInput for a negative volume, a share outside 0 to 1 or a product that is not stronger than wanted
     */
    public static Estimate productVolume(
            double volume, double strengthNow, double strengthWanted, double productStrength) {
        Need.notNegative(volume, "volume of the bath", "m³");
        Need.between(strengthNow, 0, 1, "strength now", "");
        Need.between(strengthWanted, 0, 1, "strength wanted", "");
        Need.between(productStrength, 0, 1, "strength of the product", "");
        if (productStrength <= strengthWanted) {
            throw Need.refused(
                    productStrength,
                    "strength of the product",
                    "",
                    "the bath is to have " + strengthWanted + ", so give a stronger product");
        }
        double missing = StrictMath.max(0, strengthWanted - strengthNow);
        return Estimate.of(volume * missing / (productStrength - strengthWanted))
                .warnIf(
                        strengthNow > strengthWanted,
                        "The bath is stronger than wanted: water brings it back, no product");
    }
}

package org.washwright.science;

/**
 * Strength of a bath from a titration, by the maker's factor: {@code c = v f}.
 *
 * <p>c share of product in the bath, v titrant in m³, f share for each m³ of titrant (0.42 % for each ml is 4200 1/m³),
 * for the sample, titrant and indicator of the maker's sheet. Soil, carbonate and hard water use up titrant too: an old
 * bath reads too strong. A strength above 1 is given with a warning.
 */
public final class Titration {

    private Titration() {}

    /**
     * Share of product in the bath.
     *
     * @throws RefusedInput for a negative volume or a factor that is not above zero
     */
    public static Estimate strength(double titrantVolume, double factor) {
        Need.notNegative(titrantVolume, "titrant used", "m³");
        double strength = titrantVolume * factor(factor);
        return Estimate.of(strength)
                .warnIf(strength > 1, "A bath has no more than 100 % of product: check the factor and its unit");
    }

    /**
     * Titrant in m³ that a strength uses: the inverse of {@link #strength}.
     *
     * @throws RefusedInput for a strength outside 0 to 1 or a factor that is not above zero
     */
    public static Estimate titrant(double strength, double factor) {
        Need.between(strength, 0, 1, "strength of the bath", "");
        return Estimate.of(strength / factor(factor));
    }

    private static double factor(double factor) {
        return Need.positive(factor, "factor of the titration", "1/m³");
    }
}

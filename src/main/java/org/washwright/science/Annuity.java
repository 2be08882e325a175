package org.washwright.science;

/**
 * Share of an investment to pay each year: {@code a = i (1 + i)^n / ((1 + i)^n - 1)}, without interest 1/n (common
 * textbook formula of the capital recovery factor, from memory).
 *
 * <p>i interest a year as a share, n life in years, paid at each year's end. No inflation, taxes or value left at the
 * end.
 */
public final class Annuity {

    private Annuity() {}

    /**
     * Share of the investment to pay each year.
     *
     * @throws RefusedInput for a negative interest or a life that is not above zero
     */
    public static Estimate factor(double interest, double years) {
        Need.notNegative(interest, "interest", "");
        Need.positive(years, "life in years", "");
        // The same formula divided by (1 + i)^n, which neither overflows nor cancels.
        return Estimate.of(
                interest == 0 ? 1 / years : interest / -StrictMath.expm1(-years * StrictMath.log1p(interest)));
    }
}

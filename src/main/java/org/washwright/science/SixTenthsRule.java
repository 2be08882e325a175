package org.washwright.science;

/**
 * Cost of a machine from that of one of another size: {@code K = K0 (S / S0)^n} with n about 0.6 (Williams, Chemical
 * Engineering 54 (December 1947) 124, from memory).
 *
 * <p>K in €, S size in any one unit. An order of magnitude: within about 30 % for machines of one kind and year. Sizes
 * that differ by more than ten times are taken with a warning.
 */
public final class SixTenthsRule {

    private static final double FURTHEST = 10;

    private SixTenthsRule() {}

    /**
     * Cost in the currency of the reference.
     *
     * @param referenceCost €
     * @param referenceSize in the unit of the size
     * @param size in the unit of the reference
     * @param exponent 0.6 where nothing better is known; 1 where two machines cost twice as much as one
     * @throws RefusedInput for a negative cost or exponent, or a size that is not above zero
     */
    public static Estimate cost(double referenceCost, double referenceSize, double size, double exponent) {
        Need.notNegative(referenceCost, "cost of the reference", "€");
        Need.positive(referenceSize, "size of the reference", "");
        Need.positive(size, "size", "");
        Need.notNegative(exponent, "exponent", "");
        double ratio = size / referenceSize;
        return Estimate.of(referenceCost * StrictMath.pow(ratio, exponent))
                .warnIf(
                        StrictMath.max(ratio, 1 / ratio) > FURTHEST * (1 + 1e-9),
                        () -> "Costs carry over to machines up to ten times larger or smaller, not to "
                                + Need.text(ratio) + " times the size");
    }
}

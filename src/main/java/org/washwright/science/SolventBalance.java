package org.washwright.science;

/**
 * Solvent that went into the air, from what was bought and what is accounted for: {@code E = I + S - (w s + R + D)}
 * (balance in the style of Directive 2010/75/EU, annex VII, part 7, from memory).
 *
 * <p>E emission, I input, S by how much the stock fell (negative where it grew), w waste with its share s of solvent, R
 * recovered solvent given away, D destroyed; all in kg or all in kg/s. A negative emission means that something was
 * weighed or guessed wrongly: the value is given with a warning.
 */
public final class SolventBalance {

    private SolventBalance() {}

    /**
     * Emission in the unit of the input.
     *
     * @throws RefusedInput for a negative quantity other than the fall of the stock, or a share outside 0 to 1
     */
    public static Estimate emission(
            double input,
            double stockFall,
            double waste,
            double solventShareOfWaste,
            double recoveredOut,
            double destroyed) {
        Need.notNegative(input, "solvent bought", "kg");
        Need.finite(stockFall, "fall of the stock", "kg");
        Need.notNegative(waste, "waste", "kg");
        Need.between(solventShareOfWaste, 0, 1, "share of solvent in the waste", "");
        Need.notNegative(recoveredOut, "recovered solvent given away", "kg");
        Need.notNegative(destroyed, "destroyed solvent", "kg");
        double emission = input + stockFall - (waste * solventShareOfWaste + recoveredOut + destroyed);
        return Estimate.of(emission)
                .warnIf(
                        emission < 0,
                        "More solvent is accounted for than came in: check the share in the waste and the stock");
    }

    /**
     * Share of the input that was emitted; below 0 or above 1 with a warning.
     *
     * @throws RefusedInput for an input that is not above zero
     */
    public static Estimate share(double emission, double input) {
        Need.finite(emission, "emission", "kg");
        Need.positive(input, "solvent bought", "kg");
        double share = emission / input;
        return Estimate.of(share)
                .warnIf(
                        share < 0 || share > 1,
                        () -> "An emission of " + Need.text(share * 100)
                                + " % of the input is not possible over a long time: check the balance");
    }
}

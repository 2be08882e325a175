package org.washwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;

/**
 * A unit as an exact factor (a fraction of whole numbers) to coherent SI, with an exact offset for the two everyday
 * temperature scales.
 *
 * @param symbol as written
 * @param numerator factor's numerator
 * @param denominator factor's denominator
 * @param offset added after the factor, in SI; zero but for °C and °F
 * @param exponents of metre, kilogram, second, kelvin, ampere, currency
 * @param scale dimension of a hardness scale or pH; null for a true unit
 */
record Unit(
        String symbol,
        BigInteger numerator,
        BigInteger denominator,
        BigDecimal offset,
        int[] exponents,
        Dimension scale) {

    /** Whole numbers of so many bits are exact as doubles. */
    private static final int EXACT_BITS = 53;

    private static final MathContext EXACT_ENOUGH = new MathContext(60);

    /** True when quantities in this unit are of the dimension. */
    boolean fits(Dimension dimension) {
        if (scale != null || dimension.isScale()) {
            return scale == dimension || (dimension == Dimension.PH && scale == null && isPlain());
        }
        if (dimension == Dimension.TEMPERATURE || offset.signum() == 0) {
            return Arrays.equals(exponents, dimension.exponents());
        }
        return dimension == Dimension.TEMPERATURE_DIFFERENCE;
    }

    private boolean isPlain() {
        return Arrays.stream(exponents).allMatch(e -> e == 0) && numerator.equals(denominator);
    }

    /** SI value of an amount in this unit, rounded once. */
    double toSi(BigDecimal amount, Dimension dimension) {
        BigDecimal scaled =
                amount.multiply(new BigDecimal(numerator)).divide(new BigDecimal(denominator), EXACT_ENOUGH);
        return (dimension == Dimension.TEMPERATURE ? scaled.add(offset) : scaled).doubleValue();
    }

    /** Amount in this unit of an SI value, rounded once. */
    double fromSi(double si, Dimension dimension) {
        boolean shifted = dimension == Dimension.TEMPERATURE && offset.signum() != 0;
        // One operation on numbers that doubles hold exactly is rounded once by itself.
        if (!shifted && numerator.equals(BigInteger.ONE) && denominator.bitLength() <= EXACT_BITS) {
            return si * denominator.doubleValue();
        }
        if (!shifted && denominator.equals(BigInteger.ONE) && numerator.bitLength() <= EXACT_BITS) {
            return si / numerator.doubleValue();
        }
        BigDecimal value = new BigDecimal(si);
        BigDecimal based = dimension == Dimension.TEMPERATURE ? value.subtract(offset) : value;
        return based.multiply(new BigDecimal(denominator))
                .divide(new BigDecimal(numerator), EXACT_ENOUGH)
                .doubleValue();
    }
}

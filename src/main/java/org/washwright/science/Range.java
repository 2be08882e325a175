package org.washwright.science;

import java.util.Locale;

/**
 * Temperatures between which a correlation holds.
 *
 * @param what the correlation, as it starts a sentence
 * @param from lowest temperature, K
 * @param to highest temperature, K
 */
record Range(String what, double from, double to) {

    private static final double ICE = 273.15;

    /** The value, with a warning when the temperature lies outside. */
    Estimate at(double kelvin, double value) {
        Estimate estimate = Estimate.of(value);
        return kelvin >= from && kelvin <= to
                ? estimate
                : estimate.warn(String.format(
                        Locale.ROOT,
                        "%s from %.0f to %.0f °C, not at %.0f °C",
                        what,
                        from - ICE,
                        to - ICE,
                        kelvin - ICE));
    }
}

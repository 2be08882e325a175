package org.washwright.science;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/**
 * What a correlation gives: a number, and in a practitioner's words what stands against trusting it.
 *
 * @param value in SI; never NaN, infinite where the honest answer is "never" or "without end"
 * @param warnings whole sentences without a full stop, in the order they arose; empty inside the range of validity
 */
public record Estimate(double value, List<String> warnings) {

    /**
     * Keeps a copy.
     *
     * @throws RefusedInput when the value is no number
     */
    public Estimate {
        if (Double.isNaN(value)) {
            throw new RefusedInput("an estimate has to be a number, not NaN; check what went into it");
        }
        warnings = List.copyOf(warnings);
    }

    /** A value that nothing stands against. */
    public static Estimate of(double value) {
        return new Estimate(value, List.of());
    }

    /** The same value with one more warning. */
    public Estimate warn(String sentence) {
        List<String> more = new ArrayList<>(warnings);
        more.add(sentence);
        return new Estimate(value, more);
    }

    /** The same value, with this warning when the condition holds. */
    Estimate warnIf(boolean condition, String sentence) {
        return condition ? warn(sentence) : this;
    }

    /** The same, where the words take work that is mostly not needed. */
    Estimate warnIf(boolean condition, Supplier<String> sentence) {
        return condition ? warn(sentence.get()) : this;
    }

    /** Another value under the same warnings: what was computed from an uncertain number is no surer. */
    public Estimate withValue(double other) {
        return new Estimate(other, warnings);
    }

    /** What a further correlation makes of this value; the warnings of both go with it. */
    public Estimate then(DoubleFunction<Estimate> correlation) {
        return correlation.apply(value).warnAs(this);
    }

    /** The same value, with the warnings of an estimate that went into it added. */
    Estimate warnAs(Estimate other) {
        Estimate all = this;
        for (String warning : other.warnings) {
            all = all.warn(warning);
        }
        return all;
    }
}

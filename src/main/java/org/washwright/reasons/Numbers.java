package org.washwright.reasons;

import java.util.List;
import org.washwright.problem.ProblemError;

/** Whole numbers in an address. */
final class Numbers {

    private Numbers() {}

    /** The number; its lowest value after an error. */
    static int within(String name, String text, int low, int high, List<ProblemError> errors) {
        if (text.matches("[0-9]{1,9}")) {
            int value = Integer.parseInt(text);
            if (value >= low && value <= high) {
                return value;
            }
        }
        errors.add(ProblemError.at(
                "?" + name,
                text,
                "The parameter '" + name + "' is no whole number from " + low + " to " + high + ".",
                "Leave it out, or write a number within these bounds.",
                "bad-parameter"));
        return low;
    }
}

package org.washwright.http;

import java.util.ArrayList;
import java.util.List;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/**
 * Which part of a list is asked for.
 *
 * @param page number of the page, from 0
 * @param size entries of a page
 */
public record Slice(int page, int size) {

    /** Most entries of a page. */
    public static final int MAX_SIZE = 200;

    /** Entries of a page when nothing is said, as the {@code @DefaultValue} of the parameter. */
    public static final String USUAL_SIZE = "50";

    private static final int MAX_PAGE = 1_000_000;

    /** Reads the two parameters; both are checked and all errors told at once. */
    public static Slice of(String page, String size) {
        List<ProblemError> errors = new ArrayList<>();
        int p = number("page", page, 0, MAX_PAGE, errors);
        int s = number("size", size, 1, MAX_SIZE, errors);
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return new Slice(p, s);
    }

    /** The first entry's place in the whole list. */
    public int from() {
        return page * size;
    }

    /** This part of a list that is already in memory. */
    public <T> List<T> of(List<T> all) {
        int start = Math.min(all.size(), from());
        return all.subList(start, Math.min(all.size(), start + size));
    }

    private static int number(String name, String text, int low, int high, List<ProblemError> errors) {
        try {
            int value = Integer.parseInt(text);
            if (value >= low && value <= high) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, as a number out of bounds is
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

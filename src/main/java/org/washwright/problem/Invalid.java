package org.washwright.problem;

import java.util.List;

/** A request whose content is wrong; all errors are told at once. */
public class Invalid extends ProblemException {
    private static final long serialVersionUID = 1L;

    /** The errors are in the order of the content. */
    public Invalid(List<ProblemError> errors) {
        super(422, "Not valid", summary(errors.size()), errors);
    }

    private static String summary(int count) {
        return count == 1 ? "One thing in the request is wrong." : count + " things in the request are wrong.";
    }
}

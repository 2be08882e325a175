package org.washwright.problem;

import java.util.List;

/** The request does not fit the present state of the thing it is about. */
public class Conflict extends ProblemException {
    private static final long serialVersionUID = 1L;

    /** The detail says what and, where there is any, the way out. */
    public Conflict(String detail) {
        super(409, "Conflict", detail, List.of());
    }
}

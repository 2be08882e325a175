package org.washwright.problem;

import java.util.List;

/** The caller is known and may not do this. */
public class Refused extends ProblemException {
    private static final long serialVersionUID = 1L;

    /** The detail says what and, where there is any, the way out. */
    public Refused(String detail) {
        super(403, "Not allowed", detail, List.of());
    }
}

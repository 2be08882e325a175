package org.washwright.problem;

import java.util.List;

/** The thing was changed since the caller read it. */
public class PreconditionFailed extends ProblemException {
    private static final long serialVersionUID = 1L;

    /** The detail says what and, where there is any, the way out. */
    public PreconditionFailed(String detail) {
        super(412, "Changed meanwhile", detail, List.of());
    }
}

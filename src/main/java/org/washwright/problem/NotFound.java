package org.washwright.problem;

import java.util.List;

/** What was asked for is not there, or not for this caller to see: both are told alike. */
public class NotFound extends ProblemException {
    private static final long serialVersionUID = 1L;

    /** The detail says what and, where there is any, the way out. */
    public NotFound(String detail) {
        super(404, "Not found", detail, List.of());
    }

    /** A thing of some kind that is not there under this id. */
    public static NotFound of(String kind, Object id) {
        return new NotFound("There is no " + kind + " " + id + " here; look it up in its list again.");
    }
}

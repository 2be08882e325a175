package org.washwright.problem;

import java.util.List;

/** A request that is refused; its text is meant for the caller. */
public class ProblemException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String title;
    private final transient List<ProblemError> errors;

    /** A refusal with this HTTP status, a short title, one sentence of detail and any number of single errors. */
    public ProblemException(int status, String title, String detail, List<ProblemError> errors) {
        super(detail);
        this.status = status;
        this.title = title;
        this.errors = List.copyOf(errors);
    }

    /** The HTTP status. */
    public int status() {
        return status;
    }

    /** The short title. */
    public String title() {
        return title;
    }

    /** The single errors. */
    public List<ProblemError> errors() {
        return errors;
    }
}

package org.washwright.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/** The body of a problem answer, fields as in RFC 9457 plus the list of errors. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Problem(
        String type, String title, int status, String detail, String instance, List<ProblemError> errors) {
    /** The media type of a problem answer. */
    public static final String MEDIA_TYPE = "application/problem+json";

    /** The type of a problem that its status and title describe well enough. */
    public static final String UNTYPED = "about:blank";

    public Problem {
        errors = List.copyOf(errors);
    }
}

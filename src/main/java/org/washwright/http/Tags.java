package org.washwright.http;

import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Hashes;
import org.washwright.problem.PreconditionFailed;
import org.washwright.problem.ProblemException;

/** Entity tags: what a caller has read, and the condition under which a change still fits it. */
public final class Tags {

    private Tags() {}

    /** The tag of a row by its version. */
    public static EntityTag of(int version) {
        return new EntityTag("v" + version);
    }

    /** An answer tagged by its own content; 304 when the caller already holds it. */
    public static Response.ResponseBuilder answer(Request request, Object body) {
        EntityTag tag = new EntityTag(Hashes.sha256(Hashes.canonical(body)).substring(0, 32));
        return Optional.ofNullable(request.evaluatePreconditions(tag))
                .orElseGet(() -> Response.ok(body).tag(tag));
    }

    /** An answer tagged by a row's version; 304 when the caller already holds it. */
    public static Response.ResponseBuilder answer(Request request, Object body, int version) {
        EntityTag tag = of(version);
        return Optional.ofNullable(request.evaluatePreconditions(tag))
                .orElseGet(() -> Response.ok(body).tag(tag));
    }

    /**
     * The version that a change was made against, from the {@code If-Match} header.
     *
     * @throws ProblemException 428 when the header is missing, 412 when it is no tag of a version
     */
    public static int required(String ifMatch) {
        if (ifMatch == null || ifMatch.isBlank()) {
            throw new ProblemException(
                    428,
                    "Condition missing",
                    "This change needs the header If-Match with the ETag that was read last, so that nobody's work is"
                            + " overwritten unseen.",
                    List.of());
        }
        String tag = ifMatch.strip();
        if (tag.matches("\"v[0-9]{1,9}\"")) {
            return Integer.parseInt(tag.substring(2, tag.length() - 1));
        }
        throw changed();
    }

    /** Refuses a change that was made against another version than the present one. */
    public static void check(int expected, int present) {
        if (expected != present) {
            throw changed();
        }
    }

    private static PreconditionFailed changed() {
        return new PreconditionFailed("It was changed since it was read; read it again and repeat the change on that.");
    }
}

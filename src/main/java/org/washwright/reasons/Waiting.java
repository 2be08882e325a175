package org.washwright.reasons;

import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import org.washwright.http.Tags;
import org.washwright.rulebook.Work;

/** Answers for programs with what came of a search, or with how far it is. */
final class Waiting {
    private static final int ACCEPTED = 202;

    private Waiting() {}

    static Response answer(Request request, Work<?> work) {
        return work.result()
                .map(found -> Tags.answer(request, found).build())
                .orElseGet(() -> Response.status(ACCEPTED)
                        .header("Retry-After", "2")
                        .entity(Map.of("done", work.done(), "of", work.all()))
                        .build());
    }
}

package org.washwright.rulebook;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/**
 * A text that was kept when it could not stay in its file.
 *
 * @param id of the record
 * @param path the file that it belonged to
 * @param why {@code changed meanwhile} or {@code deleted}
 * @param by whose text it is
 * @param at when it was kept, ISO 8601, UTC
 * @param bytes the text
 */
public record KeptAside(
        UUID id,
        String path,
        String why,
        String by,
        String at,
        @JsonIgnore byte[] bytes) {

    /** The text itself. */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The minute it was kept. */
    @JsonIgnore
    public String minute() {
        return at.substring(0, 16).replace('T', ' ');
    }
}

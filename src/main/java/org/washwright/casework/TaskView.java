package org.washwright.casework;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.Optional;
import java.util.UUID;

/**
 * A task in a list.
 *
 * @param id its id
 * @param title what people call it
 * @param created who made it and when
 * @param changed who last changed it and when
 * @param version counts its changes, as in its ETag
 * @param variantOf the task it was made from by changing something; empty when it was described by itself
 */
public record TaskView(UUID id, String title, Act created, Act changed, int version, Optional<UUID> variantOf) {

    /** Who and when (ISO 8601, UTC). */
    public record Act(String by, String at) {

        /** The day alone. */
        @JsonIgnore
        public String day() {
            return at.substring(0, 10);
        }

        /** Day and minute. */
        @JsonIgnore
        public String minute() {
            return at.substring(0, 10) + " " + at.substring(11, 16);
        }
    }
}

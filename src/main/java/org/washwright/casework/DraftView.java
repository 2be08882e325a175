package org.washwright.casework;

import java.util.Optional;
import java.util.UUID;

/**
 * A draft in a list.
 *
 * @param title what it is called so far; may be empty
 * @param changed when it was last kept (ISO 8601, UTC)
 * @param task the task that it is a change of; empty for a new one
 * @param taskVersion version of that task when the change was begun
 */
record DraftView(UUID id, String title, String changed, Optional<UUID> task, int taskVersion) {

    /** Day and minute. */
    public String minute() {
        return changed.substring(0, 10) + " " + changed.substring(11, 16);
    }

    /** What to call it. */
    public String name() {
        return title.isEmpty() ? "without a name yet" : title;
    }
}

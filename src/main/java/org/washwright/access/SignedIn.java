package org.washwright.access;

import java.util.Set;
import java.util.UUID;

/** What is known about a proven caller. */
record SignedIn(UUID accountId, String name, Set<String> roles, UUID workspaceId, By by) {
    /** How the caller proved who it is. */
    enum By {
        SESSION,
        TOKEN
    }
}

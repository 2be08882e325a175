package org.washwright.rulebook;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;

/** A body of know-how under one name; its states are editions. */
@Entity
class Rulebook {
    @Id
    UUID id;

    UUID workspaceId;
    String name;
    Instant createdAt;

    Rulebook() {}

    Rulebook(UUID workspaceId, String name, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.name = name;
        this.createdAt = now;
    }
}

package org.washwright.access;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;

/** A closed room of accounts and everything they make; nothing is seen across its walls. */
@Entity
class Workspace {
    @Id
    UUID id;

    String name;
    String title;
    Instant createdAt;

    Workspace() {}

    Workspace(String name, String title, Instant now) {
        this.id = UUID.randomUUID();
        this.name = name;
        this.title = title;
        this.createdAt = now;
    }
}

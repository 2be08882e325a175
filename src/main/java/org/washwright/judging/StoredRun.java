package org.washwright.judging;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.document.Hashes;
import org.washwright.impact.replay.Impact;

/** A run as it is kept; it is never changed. */
@Entity
@Table(name = "impact_run")
class StoredRun {
    @Id
    UUID id;

    UUID workspaceId;
    UUID editionId;
    UUID beforeId;
    String afterHash;
    String beforeHash;
    String document;
    UUID madeBy;
    String madeByName;
    Instant madeAt;

    StoredRun() {}

    StoredRun(UUID workspaceId, UUID editionId, UUID beforeId, Impact impact, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.editionId = editionId;
        this.beforeId = beforeId;
        this.afterHash = impact.after().textHash();
        this.beforeHash = impact.before().textHash();
        this.document = new String(Hashes.canonical(impact), StandardCharsets.UTF_8);
        this.madeBy = by.id();
        this.madeByName = by.name();
        this.madeAt = now;
    }

    KeptRun view() {
        try {
            Impact impact = Hashes.read(document.getBytes(StandardCharsets.UTF_8), Impact.class);
            return new KeptRun(editionId, beforeId, impact, madeByName, madeAt.toString());
        } catch (IOException e) {
            throw new UncheckedIOException("a run that was stored", e);
        }
    }
}

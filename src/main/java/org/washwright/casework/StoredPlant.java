package org.washwright.casework;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.washwright.access.Person;

/** A plant as it was given, so that its author finds the units and words that were typed. */
@Entity
@Table(name = "plant")
class StoredPlant {
    @Id
    UUID id;

    UUID workspaceId;
    String name;
    String document;
    UUID createdBy;
    String createdByName;
    Instant createdAt;
    UUID changedBy;
    String changedByName;
    Instant changedAt;

    @Version
    int version;

    StoredPlant() {}

    StoredPlant(UUID workspaceId, GivenPlant given, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.createdBy = by.id();
        this.createdByName = by.name();
        this.createdAt = now;
        change(given, by, now);
    }

    final void change(GivenPlant given, Person by, Instant now) {
        name = given.plant().name();
        document = given.text();
        changedBy = by.id();
        changedByName = by.name();
        changedAt = now;
    }

    PlantView view() {
        return new PlantView(
                id,
                name,
                new TaskView.Act(createdByName, createdAt.toString()),
                new TaskView.Act(changedByName, changedAt.toString()),
                version);
    }
}

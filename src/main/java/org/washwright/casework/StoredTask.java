package org.washwright.casework;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;

/** A cleaning task as it was given, so that its author finds the units and words that were typed. */
@Entity
@Table(name = "cleaning_task")
class StoredTask {
    @Id
    UUID id;

    UUID workspaceId;
    String title;
    String document;
    UUID variantOf;
    UUID createdBy;
    String createdByName;
    Instant createdAt;
    UUID changedBy;
    String changedByName;
    Instant changedAt;

    @Version
    int version;

    StoredTask() {}

    StoredTask(UUID workspaceId, GivenTask given, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.createdBy = by.id();
        this.createdByName = by.name();
        this.createdAt = now;
        change(given, by, now);
    }

    final void change(GivenTask given, Person by, Instant now) {
        title = given.task().title();
        document = given.text();
        changedBy = by.id();
        changedByName = by.name();
        changedAt = now;
    }

    TaskView view() {
        return new TaskView(
                id,
                title,
                new TaskView.Act(createdByName, createdAt.toString()),
                new TaskView.Act(changedByName, changedAt.toString()),
                version,
                Optional.ofNullable(variantOf));
    }
}

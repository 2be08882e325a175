package org.washwright.casework;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;

/** A task form as it was typed. */
@Entity
@Table(name = "task_draft")
class StoredDraft {
    private static final int TITLE_MOST = 200;

    @Id
    UUID id;

    UUID workspaceId;
    UUID accountId;
    UUID taskId;
    int taskVersion;
    String title;
    String fields;
    Instant changedAt;

    StoredDraft() {}

    StoredDraft(UUID workspaceId, Person by, Optional<UUID> task, int taskVersion) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.accountId = by.id();
        this.taskId = task.orElse(null);
        this.taskVersion = taskVersion;
    }

    final void keep(FormFields typed, Instant now) {
        String name = typed.first("title");
        title = name.length() > TITLE_MOST ? name.substring(0, TITLE_MOST) : name;
        fields = typed.json();
        changedAt = now;
    }

    DraftView view() {
        return new DraftView(id, title, changedAt.toString(), Optional.ofNullable(taskId), taskVersion);
    }
}

package org.washwright.reasons;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.casework.KeptAnswer;
import org.washwright.casework.TaskView;
import org.washwright.explain.mark.Objection;

/** A mark on a reason, as it was made, and what became of it. */
@Entity
@Table(name = "reason_mark")
class StoredMark {
    private static final int MOST_SAID = 4000;

    @Id
    UUID id;

    UUID workspaceId;
    UUID assessmentId;
    UUID taskId;
    String taskTitle;
    UUID editionId;
    String place;
    String said;
    String rules;
    String because;
    String state;
    String reply;
    UUID createdBy;
    String createdByName;
    Instant createdAt;
    UUID changedBy;
    String changedByName;
    Instant changedAt;

    @Version
    int version;

    StoredMark() {}

    StoredMark(UUID workspaceId, KeptAnswer kept, Objection objection, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.assessmentId = kept.view().id();
        this.taskId = kept.task().id();
        this.taskTitle = kept.task().title();
        this.editionId = kept.view().editionId();
        this.place = objection.at();
        this.said = objection
                .said()
                .substring(0, Math.min(MOST_SAID, objection.said().length()));
        this.rules = String.join("\n", objection.rules());
        this.because = objection.because();
        this.createdBy = by.id();
        this.createdByName = by.name();
        this.createdAt = now;
        settle(MarkState.OPEN, "", by, now);
    }

    final void settle(MarkState to, String words, Person by, Instant now) {
        state = to.word();
        reply = words;
        changedBy = by.id();
        changedByName = by.name();
        changedAt = now;
    }

    List<String> ruleIds() {
        return rules.isEmpty() ? List.of() : Arrays.asList(rules.split("\n"));
    }

    MarkView view() {
        return new MarkView(
                id,
                assessmentId,
                taskId,
                taskTitle,
                editionId,
                place,
                said,
                ruleIds(),
                because,
                state,
                reply,
                new TaskView.Act(createdByName, createdAt.toString()),
                new TaskView.Act(changedByName, changedAt.toString()),
                version);
    }
}

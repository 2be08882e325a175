package org.washwright.casework;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.washwright.access.Person;
import org.washwright.assessment.FrozenAnswer;

/** An answer as it was given, and what stands around it. */
@Entity
@Immutable
@Table(name = "assessment")
class StoredAssessment {
    @Id
    UUID id;

    UUID workspaceId;
    UUID taskId;
    int taskVersion;
    UUID editionId;
    String requestHash;
    byte[] answer;
    String answerHash;
    String program;
    UUID createdBy;
    String createdByName;
    Instant createdAt;

    StoredAssessment() {}

    StoredAssessment(UUID workspaceId, TaskView task, UUID editionId, FrozenAnswer frozen, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.taskId = task.id();
        this.taskVersion = task.version();
        this.editionId = editionId;
        this.requestHash = frozen.answer().requestHash();
        this.answer = frozen.bytes();
        this.answerHash = frozen.hash();
        this.program = frozen.answer().request().program();
        this.createdBy = by.id();
        this.createdByName = by.name();
        this.createdAt = now;
    }

    AssessmentView view() {
        return new AssessmentView(
                id,
                taskId,
                taskVersion,
                editionId,
                requestHash,
                answerHash,
                program,
                new TaskView.Act(createdByName, createdAt.toString()));
    }
}

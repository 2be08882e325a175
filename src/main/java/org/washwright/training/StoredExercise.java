package org.washwright.training;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.casework.TaskView;
import org.washwright.document.Hashes;
import org.washwright.explain.exercise.Exercise;

/** An exercise as it was set; it never changes. */
@Entity
@Table(name = "exercise")
class StoredExercise {
    @Id
    UUID id;

    UUID workspaceId;
    UUID assessmentId;
    String title;
    String document;
    LocalDate due;
    UUID createdBy;
    String createdByName;
    Instant createdAt;

    StoredExercise() {}

    StoredExercise(UUID workspaceId, UUID assessmentId, Exercise exercise, LocalDate due, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.assessmentId = assessmentId;
        this.title = exercise.title();
        this.document = new String(Hashes.canonical(exercise), StandardCharsets.UTF_8);
        this.due = due;
        this.createdBy = by.id();
        this.createdByName = by.name();
        this.createdAt = now;
    }

    SetExercise view() {
        try {
            return new SetExercise(
                    id,
                    assessmentId,
                    Hashes.read(document.getBytes(StandardCharsets.UTF_8), Exercise.class),
                    Optional.ofNullable(due).map(LocalDate::toString),
                    new TaskView.Act(createdByName, createdAt.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException("an exercise that was stored", e);
        }
    }
}

package org.washwright.training;

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
import org.washwright.explain.exercise.Feedback;
import org.washwright.explain.exercise.Prediction;

/** One try at an exercise, with the feedback as it was given. */
@Entity
@Table(name = "exercise_try")
class StoredTry {
    @Id
    UUID id;

    UUID workspaceId;
    UUID exerciseId;
    String prediction;
    String feedback;
    UUID madeBy;
    String madeByName;
    Instant madeAt;

    StoredTry() {}

    StoredTry(UUID workspaceId, UUID exerciseId, Prediction prediction, Feedback feedback, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.exerciseId = exerciseId;
        this.prediction = new String(Hashes.canonical(prediction), StandardCharsets.UTF_8);
        this.feedback = new String(Hashes.canonical(feedback), StandardCharsets.UTF_8);
        this.madeBy = by.id();
        this.madeByName = by.name();
        this.madeAt = now;
    }

    TryView view() {
        return new TryView(
                id, madeByName, madeAt.toString(), read(prediction, Prediction.class), read(feedback, Feedback.class));
    }

    private static <T> T read(String json, Class<T> type) {
        try {
            return Hashes.read(json.getBytes(StandardCharsets.UTF_8), type);
        } catch (IOException e) {
            throw new UncheckedIOException("a try that was stored", e);
        }
    }
}

package org.washwright.training;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.UUID;
import org.washwright.explain.exercise.Feedback;
import org.washwright.explain.exercise.Prediction;

/**
 * A try at an exercise.
 *
 * @param id its id
 * @param by who made it
 * @param at when, ISO 8601, UTC
 * @param prediction what was thought
 * @param feedback how that compares with the answer
 */
record TryView(UUID id, String by, String at, Prediction prediction, Feedback feedback) {

    /** Day and minute. */
    @JsonIgnore
    public String minute() {
        return at.substring(0, 10) + " " + at.substring(11, 16);
    }
}

package org.washwright.judging;

import com.fasterxml.jackson.annotation.JsonIgnore;

/**
 * Whether a changed answer was meant.
 *
 * @param task key of the task
 * @param title what that was called then
 * @param verdict {@code meant} or {@code not meant}
 * @param note why
 * @param by who judged it
 * @param at when, ISO 8601, UTC
 * @param version counts its changes, as in its ETag
 */
record Judgement(String task, String title, String verdict, String note, String by, String at, int version) {

    /** The day alone. */
    @JsonIgnore
    public String day() {
        return at.substring(0, 10);
    }

    /** Whether the change is as it should be. */
    @JsonIgnore
    public boolean isMeant() {
        return verdict.equals(Verdict.MEANT.word());
    }
}

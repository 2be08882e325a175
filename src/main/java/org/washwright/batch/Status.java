package org.washwright.batch;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can come of a record. */
public enum Status {
    /** There is an answer. */
    ANSWERED,
    /** The record is no task that can be answered; its line says why. */
    REFUSED,
    /** The program failed on it. */
    FAILED;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Status> byWord(String word) {
        return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst();
    }
}

package org.washwright.rulebook;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.Arrays;

/** Where an edition stands. */
enum EditionState {
    DRAFT("draft"),
    ASKED("asked for review"),
    RELEASED("released"),
    WITHDRAWN("withdrawn");

    private final String word;

    EditionState(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    /** Whether its files stand for good. */
    boolean stands() {
        return this == RELEASED || this == WITHDRAWN;
    }

    /** Kept in the database as the word itself. */
    @Converter(autoApply = true)
    static class AsWord implements AttributeConverter<EditionState, String> {
        @Override
        public String convertToDatabaseColumn(EditionState state) {
            return state.word;
        }

        @Override
        public EditionState convertToEntityAttribute(String word) {
            return Arrays.stream(values())
                    .filter(state -> state.word.equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("an edition can't be '" + word + "'"));
        }
    }
}

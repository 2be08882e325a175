package org.washwright.rulebook;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Optional;
import java.util.UUID;

/**
 * An edition as told to people and programs.
 *
 * @param id of the record, not part of any hash
 * @param rulebook name of the rulebook
 * @param title what a reader calls it
 * @param state {@code draft}, {@code asked for review}, {@code released} or {@code withdrawn}
 * @param number number of a released edition within its rulebook
 * @param starter true for the edition that came with the program
 * @param errors errors found in its files
 * @param warnings warnings found in its files
 * @param rules number of rules; 0 while there are errors
 * @param terms number of terms; 0 while there are errors
 * @param meaningHash hash over the content in canonical form; missing while there are errors
 * @param textHash hash over the raw files
 * @param created who made it and when
 * @param changed who last gave it its files and when
 * @param asked who asked for a review
 * @param approved who approved these very files, and said what
 * @param released who released it
 * @param despite what was left open at the release, and why it was released all the same
 * @param withdrawn who withdrew it, and why
 * @param basedOn the edition that a draft was begun from
 * @param version counts changes of this record, as in its ETag
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
public record EditionView(
        UUID id,
        String rulebook,
        String title,
        String state,
        Optional<Integer> number,
        boolean starter,
        int errors,
        int warnings,
        int rules,
        int terms,
        Optional<String> meaningHash,
        String textHash,
        Act created,
        Act changed,
        Optional<Act> asked,
        Optional<Act> approved,
        Optional<Act> released,
        Optional<String> despite,
        Optional<Act> withdrawn,
        Optional<UUID> basedOn,
        int version) {

    /** Something a person did, when (ISO 8601, UTC) and with what note. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    public record Act(String by, String at, Optional<String> note) {

        /** The day alone. */
        @JsonIgnore
        public String day() {
            return at.substring(0, 10);
        }
    }

    /** Name and number, as people say it. */
    @JsonIgnore
    public String label() {
        return rulebook + number.map(n -> ", edition " + n).orElse(", " + state);
    }

    /** Whether it is released and answers new tasks. */
    @JsonIgnore
    public boolean isReleased() {
        return state.equals(EditionState.RELEASED.word());
    }

    /** Whether it was released once: its files never change, and what it answered can be answered again. */
    @JsonIgnore
    public boolean isKept() {
        return number.isPresent();
    }
}

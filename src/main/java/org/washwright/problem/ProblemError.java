package org.washwright.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One thing wrong with a request: where it is, what was found, what to do.
 *
 * @param pointer JSON pointer into the body, or the name of a form field
 * @param file name of the file, where a request brought files
 * @param line line in that file or body, from 1
 * @param column column in that line, from 1
 * @param value what was found there
 * @param message what is wrong
 * @param advice what to do about it
 * @param code a short stable name of this kind of error
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
public record ProblemError(
        Optional<String> pointer,
        Optional<String> file,
        OptionalInt line,
        OptionalInt column,
        Optional<String> value,
        String message,
        String advice,
        String code) {

    /** An error at a place in a JSON body or at a form field. */
    public static ProblemError at(String pointer, String value, String message, String advice, String code) {
        return new ProblemError(
                Optional.of(pointer),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.of(value),
                message,
                advice,
                code);
    }

    /** An error at a place in a text file. */
    public static ProblemError in(
            String file, int line, int column, String value, String message, String advice, String code) {
        return new ProblemError(
                Optional.empty(),
                Optional.of(file),
                OptionalInt.of(line),
                OptionalInt.of(column),
                Optional.of(value),
                message,
                advice,
                code);
    }
}

package org.washwright.access;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.washwright.problem.ProblemError;

/** What is asked for when a token is made; checked before anything is kept. */
record TokenRequest(String label, int days) {
    static final int USUAL_DAYS = 90;
    private static final int LONGEST_DAYS = 365;
    private static final int LONGEST_LABEL = 80;

    /** From form fields: a number that cannot be read counts as none. */
    static TokenRequest ofForm(String label, String days) {
        return new TokenRequest(
                label.strip(), days.strip().matches("[0-9]{1,6}") ? Integer.parseInt(days.strip()) : -1);
    }

    Optional<ProblemError> labelError() {
        return label.isBlank() || label.length() > LONGEST_LABEL
                ? Optional.of(ProblemError.at(
                        "/label",
                        label,
                        "A token needs a label of 1 to " + LONGEST_LABEL + " characters.",
                        "Say what the token is for.",
                        "token-label"))
                : Optional.empty();
    }

    Optional<ProblemError> daysError() {
        return days < 1 || days > LONGEST_DAYS
                ? Optional.of(ProblemError.at(
                        "/expiresInDays",
                        Integer.toString(days),
                        "A token lasts 1 to " + LONGEST_DAYS + " days.",
                        "Give a number of days in that range.",
                        "token-days"))
                : Optional.empty();
    }

    List<ProblemError> errors() {
        return Stream.of(labelError(), daysError()).flatMap(Optional::stream).toList();
    }
}

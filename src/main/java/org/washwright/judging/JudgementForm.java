package org.washwright.judging;

import java.util.ArrayList;
import java.util.List;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/** What somebody makes of a changed answer, by form or by REST; everything that is wrong with it at once. */
record JudgementForm(Verdict verdict, String note) {
    private static final int MOST_LETTERS = 2000;

    static JudgementForm read(String verdict, String note) {
        List<ProblemError> errors = new ArrayList<>();
        String said = verdict == null ? "" : verdict.strip();
        Verdict read = Verdict.of(said).orElse(null);
        if (read == null) {
            errors.add(ProblemError.at(
                    "/verdict",
                    said,
                    "It is not said whether the change was meant.",
                    "Say \"meant\" or \"not meant\".",
                    "unknown-reference"));
        }
        String words = note == null ? "" : note.strip();
        if (words.isEmpty() && read == Verdict.NOT_MEANT) {
            errors.add(ProblemError.at(
                    "/note", "", "Nothing is written here.", "Say what is wrong with the new answer.", "missing"));
        } else if (words.length() > MOST_LETTERS) {
            errors.add(ProblemError.at(
                    "/note",
                    words.length() + " letters",
                    "This is longer than " + MOST_LETTERS + " letters.",
                    "Say it shorter.",
                    "too-long"));
        }
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return new JudgementForm(read, words);
    }
}

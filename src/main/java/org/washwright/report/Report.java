package org.washwright.report;

import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;

/**
 * What a report shows: an answer and the one line of it that is written out in full.
 *
 * @param title title of the task, which is no part of the hashed answer
 * @param notes its notes; may be empty
 * @param hash SHA-256 of the answer's bytes
 * @param answer the answer
 * @param chosen the line written out; empty when no process may clean the task
 */
public record Report(String title, String notes, String hash, Answer answer, Optional<Answer.Candidate> chosen) {

    /** The report on the line that stands first, or on none when nothing stands. */
    public static Report ofFirst(String title, String notes, String hash, Answer answer) {
        return new Report(
                title, notes, hash, answer, answer.candidates().stream().findFirst());
    }

    /** The report on the line of one process; empty when that process may not clean the task. */
    public static Optional<Report> of(String title, String notes, String hash, Answer answer, String process) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst()
                .map(c -> new Report(title, notes, hash, answer, Optional.of(c)));
    }

    /** A name for its file without the ending, as every file system takes it. */
    public String fileName() {
        String process = chosen.map(c -> "-" + plain(c.process(), 40)).orElse("");
        return plain(title, 60) + process + "-" + Numerals.shortHash(hash);
    }

    /** The line sized and planned; empty when the edition gives nothing to size by or nothing stands. */
    Optional<Design> design() {
        return chosen.flatMap(Answer.Candidate::design);
    }

    private static String plain(String text, int longest) {
        String plain = text.toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String named = plain.isEmpty() ? "task" : plain;
        return named.length() > longest ? named.substring(0, longest).replaceAll("-+$", "") : named;
    }
}

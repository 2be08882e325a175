package org.washwright.reasons;

import java.util.ArrayList;
import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.explain.mark.Objection;
import org.washwright.explain.why.NothingThere;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/** Reads what is said on a mark, by form or by REST; everything that is wrong at once. */
final class MarkForm {

    private MarkForm() {}

    /** A mark on a statement; refused when it says nothing, too much, or points nowhere. */
    static Objection objection(Answer answer, String at, String because) {
        List<ProblemError> errors = new ArrayList<>();
        String words = words("/because", because, "Say in a sentence what is wrong with it.", true, errors);
        String place = at == null ? "" : at.strip();
        try {
            if (place.isEmpty()) {
                errors.add(ProblemError.at(
                        "/of",
                        "",
                        "It is not said which statement is wrong.",
                        "Give its place, such as /cautions/0.",
                        "missing"));
            } else {
                Objection objection = Objection.of(answer, place, words);
                if (errors.isEmpty()) {
                    return objection;
                }
            }
        } catch (NothingThere e) {
            errors.add(ProblemError.at(
                    "/of",
                    place,
                    e.getMessage(),
                    "Take a place from the list of what can be asked.",
                    "unknown-reference"));
        }
        throw new Invalid(errors);
    }

    /** What a mark is settled as. */
    record Settled(MarkState state, String reply) {}

    /** How a mark is settled; a rule that stands needs a word why. */
    static Settled settled(String state, String reply) {
        List<ProblemError> errors = new ArrayList<>();
        MarkState to = MarkState.of(state == null ? "" : state.strip()).orElse(null);
        if (to == null) {
            errors.add(ProblemError.at(
                    "/state",
                    state == null ? "" : state,
                    "It is not said what becomes of the mark.",
                    "Say \"will change\", \"stands\" or \"open\".",
                    "unknown-reference"));
        }
        String words = words("/reply", reply, "Say why the rule stands.", to == MarkState.STANDS, errors);
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return new Settled(to, words);
    }

    private static String words(String field, String typed, String advice, boolean needed, List<ProblemError> errors) {
        String words = typed == null ? "" : typed.strip();
        if (words.isEmpty() && needed) {
            errors.add(ProblemError.at(field, "", "Nothing is written here.", advice, "missing"));
        } else if (words.length() > Objection.MOST_LETTERS) {
            errors.add(ProblemError.at(
                    field,
                    words.length() + " letters",
                    "This is longer than " + Objection.MOST_LETTERS + " letters.",
                    "Say it shorter.",
                    "too-long"));
        }
        return words;
    }
}

package org.washwright.problem;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.washwright.document.Diagnostic;
import org.washwright.document.Place;

/** Turns what was found wrong in a text into errors of a problem answer. */
public final class ProblemErrors {

    /** File name that stands for the body of a request, and is not told. */
    public static final String BODY = "-";

    private ProblemErrors() {}

    /** All of them, in their order. */
    public static List<ProblemError> of(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(ProblemErrors::of).toList();
    }

    private static ProblemError of(Diagnostic found) {
        Place place = found.place();
        return new ProblemError(
                place.pointer().isEmpty() ? Optional.empty() : Optional.of(place.pointer()),
                place.file().equals(BODY) ? Optional.empty() : Optional.of(place.file()),
                number(place.line()),
                number(place.column()),
                found.value().isEmpty() ? Optional.empty() : Optional.of(found.value()),
                sentence(found.text()),
                sentence(found.advice()),
                found.message().code());
    }

    private static OptionalInt number(int n) {
        return n > 0 ? OptionalInt.of(n) : OptionalInt.empty();
    }

    /** A message as a sentence: capital letter and full stop. */
    public static String sentence(String text) {
        if (text.isEmpty()) {
            return text;
        }
        String start = text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
        return start.endsWith(".") || start.endsWith("?") || start.endsWith("!") ? start : start + ".";
    }
}

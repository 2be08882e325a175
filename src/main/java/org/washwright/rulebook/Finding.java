package org.washwright.rulebook;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.washwright.document.Diagnostic;
import org.washwright.document.Place;
import org.washwright.document.Severity;
import org.washwright.exchange.EditionFiles;
import org.washwright.problem.ProblemErrors;

/**
 * Something found in a file, for display.
 *
 * @param error true for an error, false for a warning
 * @param place line and column in words
 * @param line the line as it stands in the file, shortened; empty when it is not known
 * @param value what was found there
 * @param text what is wrong
 * @param advice what to do
 */
record Finding(boolean error, String place, String line, String value, String text, String advice) {
    private static final int SHOWN = 160;

    /** Everything found in one file. */
    record File(String name, List<Finding> findings) {

        /** Where the file starts on the page. */
        public String anchor() {
            return "file-" + name.replace('/', '-');
        }

        /** How many of them are errors. */
        public long errors() {
            return findings.stream().filter(Finding::error).count();
        }
    }

    static List<File> byFile(List<Diagnostic> diagnostics, EditionFiles files) {
        return diagnostics.stream()
                .collect(Collectors.groupingBy(d -> d.place().file(), TreeMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(e -> new File(
                        e.getKey(), e.getValue().stream().map(d -> of(d, files)).toList()))
                .toList();
    }

    private static Finding of(Diagnostic found, EditionFiles files) {
        Place place = found.place();
        String where = place.line() == 0
                ? "the file"
                : "line " + place.line() + (place.column() == 0 ? "" : ", column " + place.column());
        return new Finding(
                found.severity() == Severity.ERROR,
                where,
                line(place, files),
                found.value(),
                ProblemErrors.sentence(found.text()),
                ProblemErrors.sentence(found.advice()));
    }

    private static String line(Place place, EditionFiles files) {
        byte[] bytes = files.files().get(place.file());
        if (bytes == null || place.line() == 0) {
            return "";
        }
        String line = new String(bytes, StandardCharsets.UTF_8)
                .lines()
                .skip(place.line() - 1L)
                .findFirst()
                .orElse("")
                .strip();
        return line.length() > SHOWN ? line.substring(0, SHOWN) + "…" : line;
    }
}

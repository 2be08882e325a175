package org.washwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Place;
import org.washwright.document.Severity;

/**
 * One thing that a check found, for build servers.
 *
 * @param check id of the kind of thing
 * @param checkText what that kind of thing is
 * @param level {@code error}, {@code warning} or {@code note}, as SARIF has them
 * @param text what was found here
 * @param place where; no file when it has no place
 */
record Noted(String check, String checkText, String level, String text, Place place) {

    static final String ERROR = "error";
    static final String WARNING = "warning";
    static final String NOTE = "note";

    /** Something wrong in a text. */
    static Noted of(Diagnostic d, Optional<Path> edition) {
        return new Noted(
                d.message().code(),
                d.message().text(),
                d.severity() == Severity.ERROR ? ERROR : WARNING,
                sentence(d),
                within(edition, d.place()));
    }

    /** What is wrong and what to do, with one full stop each. */
    static String sentence(Diagnostic d) {
        String advice = d.advice();
        return d.text() + ". " + advice + (advice.endsWith("?") || advice.endsWith(".") ? "" : ".");
    }

    /** A place in a file of an edition as a place in the folder where it stands, so that a repository finds it. */
    static Place within(Optional<Path> edition, Place place) {
        boolean folder = edition.isPresent() && Files.isDirectory(edition.get());
        if (!folder || place.file().isEmpty() || Files.exists(Path.of(place.file()))) {
            return place;
        }
        String base = edition.get()
                .toString()
                .replace('\\', '/')
                .replaceAll("/+$", "")
                .replaceFirst("^(\\./)+", "");
        String file = base.isEmpty() || base.equals(".") ? place.file() : base + "/" + place.file();
        return new Place(file, place.line(), place.column(), place.pointer());
    }
}

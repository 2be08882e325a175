package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.washwright.document.Diagnostic;

/** Writes diagnostics for people, one a line. */
final class DiagnosticText {

    private DiagnosticText() {}

    static void write(List<Diagnostic> diagnostics, PrintWriter out) {
        diagnostics.forEach(d -> out.println(d.severity().name().toLowerCase(Locale.ROOT) + " " + d));
    }
}

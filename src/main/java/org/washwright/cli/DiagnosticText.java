package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostic;

/** Writes diagnostics for people, one a line, and for programs. */
final class DiagnosticText {

    private DiagnosticText() {}

    static void write(List<Diagnostic> diagnostics, PrintWriter out) {
        diagnostics.forEach(d -> out.println(d.severity().name().toLowerCase(Locale.ROOT) + " " + d));
    }

    static List<Map<String, Object>> json(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(DiagnosticText::json).toList();
    }

    private static Map<String, Object> json(Diagnostic d) {
        Map<String, Object> out = new TreeMap<>();
        out.put("severity", d.severity().name().toLowerCase(Locale.ROOT));
        out.put("code", d.message().code());
        out.put("file", d.place().file());
        out.put("line", d.place().line());
        out.put("column", d.place().column());
        out.put("pointer", d.place().pointer());
        out.put("value", d.value());
        out.put("message", d.text());
        out.put("advice", d.advice());
        return out;
    }
}

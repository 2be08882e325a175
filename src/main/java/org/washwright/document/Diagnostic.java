package org.washwright.document;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * One thing found wrong in a text.
 *
 * @param message which message of the catalogue
 * @param place where
 * @param value the value found there, shortened when it is long; empty when something is missing
 * @param text what is wrong, in words
 * @param advice what to do about it
 */
public record Diagnostic(Message message, Place place, String value, String text, String advice) {

    /** Error or warning, as the message says. */
    public Severity severity() {
        return message.severity();
    }

    /** The same found elsewhere: a record of a larger text is read as if it stood alone. */
    public Diagnostic at(Place elsewhere) {
        return new Diagnostic(message, elsewhere, value, text, advice);
    }

    /** As plain data for programs. */
    public Map<String, Object> asData() {
        Map<String, Object> out = new TreeMap<>();
        out.put("severity", severity().name().toLowerCase(Locale.ROOT));
        out.put("code", message.code());
        out.put("file", place.file());
        out.put("line", place.line());
        out.put("column", place.column());
        out.put("pointer", place.pointer());
        out.put("value", value);
        out.put("message", text);
        out.put("advice", advice);
        return out;
    }

    /** Place, text and advice on one line. */
    @Override
    public String toString() {
        return place + ": " + text + ". " + advice;
    }
}

package org.washwright.document;

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

    /** Place, text and advice on one line. */
    @Override
    public String toString() {
        return place + ": " + text + ". " + advice;
    }
}

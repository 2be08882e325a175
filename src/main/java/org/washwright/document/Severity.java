package org.washwright.document;

/** How much a diagnostic weighs: an error refuses the text, a warning does not. */
public enum Severity {
    ERROR,
    WARNING
}

package org.washwright.line.sizing;

import org.washwright.quantity.Span;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/**
 * A value on the sheet of a line, with the reference by which figures cite it.
 *
 * @param ref {@code part/rate}, {@code assumption/ID}, {@code KIND/TERM/PROPERTY}, {@code window/STAGE/PARAMETER} or {@code
 *     figure/ID/STAGE}; empty when nothing is cited
 * @param value the value in SI
 */
record Cell(String ref, Value value) {

    /** Nothing to compute with. */
    static final Cell NONE = new Cell("", Value.NOT_APPLICABLE);

    /** False when it has no meaning here; a figure made from it is left out. */
    boolean applies() {
        return !(value instanceof Value.NotApplicable);
    }

    /** True for a number, known or within a span. */
    boolean isNumber() {
        return value instanceof Value.Number;
    }

    /** True for a flag that is surely set. */
    boolean isYes() {
        return value instanceof Value.OneOf o
                && o.terms().size() == 1
                && o.terms().contains(FieldType.YES);
    }

    /** True for a flag that is set or may be. */
    boolean mayBeYes() {
        return value instanceof Value.Unknown
                || value instanceof Value.OneOf o && o.terms().contains(FieldType.YES);
    }

    /** This one, or another where this has no meaning. */
    Cell or(Cell other) {
        return applies() ? this : other;
    }

    /** Middle of the span; only for numbers. */
    double middle() {
        Span span = ((Value.Number) value).span();
        return span.isPoint() ? span.low() : (span.low() + span.high()) / 2;
    }
}

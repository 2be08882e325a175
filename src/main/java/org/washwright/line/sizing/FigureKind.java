package org.washwright.line.sizing;

import org.washwright.quantity.Dimension;

/**
 * What a figure is, the same for every line.
 *
 * @param id its id, unique among all kinds
 * @param label what a reader calls it
 * @param group what it belongs to
 * @param dimension what it measures
 * @param unit unit in which it is shown; empty for a plain number
 * @param formula how it is computed, in words and signs
 * @param source citation of the formula; {@code definition} when it follows from the words
 * @param holds where it holds, in words; empty for a definition
 */
public record FigureKind(
        String id,
        String label,
        FigureGroup group,
        Dimension dimension,
        String unit,
        String formula,
        String source,
        String holds) {

    static final String DEFINITION = "definition";

    /** A figure that follows from the words. */
    static FigureKind defined(
            String id, String label, FigureGroup group, Dimension dimension, String unit, String formula) {
        return new FigureKind(id, label, group, dimension, unit, formula, DEFINITION, "");
    }

    /** A figure by a published formula. */
    static FigureKind by(
            String id,
            String label,
            FigureGroup group,
            Dimension dimension,
            String unit,
            String formula,
            String source,
            String holds) {
        return new FigureKind(id, label, group, dimension, unit, formula, source, holds);
    }
}

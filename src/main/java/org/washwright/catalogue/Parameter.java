package org.washwright.catalogue;

import org.washwright.quantity.Dimension;
import org.washwright.quantity.Span;

/**
 * Something that is set at a stage.
 *
 * @param term its term
 * @param dimension what it measures
 * @param scale the range it can have in the trade, in SI
 * @param factor which of the four cleaning factors it belongs to: medium, agitation, temperature or time
 */
public record Parameter(Term term, Dimension dimension, Span scale, String factor) {

    /** Its id. */
    public String id() {
        return term.id();
    }
}

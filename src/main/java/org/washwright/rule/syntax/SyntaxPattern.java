package org.washwright.rule.syntax;

import java.util.List;
import org.washwright.document.Place;
import org.washwright.rule.Sign;

/**
 * One pattern as written.
 *
 * @param sign positive, not or exists
 * @param variable name with its dollar sign, or empty
 * @param type fact type
 * @param constraints joined by commas
 * @param place where it stands
 */
public record SyntaxPattern(Sign sign, String variable, String type, List<SyntaxConstraint> constraints, Place place) {

    /** Keeps a copy. */
    public SyntaxPattern {
        constraints = List.copyOf(constraints);
    }
}

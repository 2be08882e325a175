package org.washwright.engine.derive;

import java.util.OptionalDouble;
import org.washwright.science.ComponentCleanlinessCode;
import org.washwright.science.ProductCleanlinessCode;

/** Codes of a task, which its reader let pass. */
final class Codes {

    /** A level is the size in micrometres of which one particle is allowed. */
    private static final double MICROMETRE = 1e-6;

    private Codes() {}

    static ComponentCleanlinessCode component(String text) {
        try {
            return ComponentCleanlinessCode.parse(text);
        } catch (ComponentCleanlinessCode.BadCode e) {
            throw new IllegalStateException("the reader lets only sound codes pass, not " + text, e);
        }
    }

    static OptionalDouble forbidden(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : component(text).smallestForbiddenSize();
    }

    static OptionalDouble particleLevel(String text) {
        return text.isEmpty()
                ? OptionalDouble.empty()
                : ProductCleanlinessCode.parse(text).particleLevel();
    }

    static OptionalDouble productParticle(String text) {
        OptionalDouble level = particleLevel(text);
        return level.isPresent() ? OptionalDouble.of(level.getAsDouble() * MICROMETRE) : level;
    }

    static OptionalDouble productResidue(String text) {
        return text.isEmpty() || ProductCleanlinessCode.parse(text).residue().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        ProductCleanlinessCode.parse(text).residue().get().massPerArea());
    }
}

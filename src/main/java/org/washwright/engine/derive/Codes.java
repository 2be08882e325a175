package org.washwright.engine.derive;

import java.util.OptionalDouble;
import org.washwright.science.ComponentCleanlinessCode;
import org.washwright.science.ProductCleanlinessCode;

/** Codes of a task, which its reader let pass. */
final class Codes {

    private Codes() {}

    static ComponentCleanlinessCode component(String text) {
        try {
            return ComponentCleanlinessCode.parse(text);
        } catch (ComponentCleanlinessCode.BadCode e) {
            throw new IllegalStateException("the reader lets only sound codes pass, not " + text, e);
        }
    }

    static ProductCleanlinessCode product(String text) {
        try {
            return ProductCleanlinessCode.parse(text);
        } catch (ProductCleanlinessCode.BadCode e) {
            throw new IllegalStateException("the reader lets only sound codes pass, not " + text, e);
        }
    }

    static OptionalDouble forbidden(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : component(text).smallestForbiddenSize();
    }

    static OptionalDouble productParticle(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : product(text).largestParticle();
    }

    static OptionalDouble productResidue(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : product(text).residue();
    }
}

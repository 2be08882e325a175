package org.washwright.exchange;

import org.washwright.catalogue.Catalogue;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Grading;
import org.washwright.rule.check.Terms;

/** Head, catalogue and grading of an edition: what everything else is read against. */
record Words(EditionHeader head, Catalogue catalogue, FactTypes types, Grading grading) {

    /** What rules may name. */
    Terms terms() {
        return new Terms(catalogue, types, grading, head.sources());
    }
}

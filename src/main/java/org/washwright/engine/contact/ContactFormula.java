package org.washwright.engine.contact;

import java.util.Collection;
import org.washwright.catalogue.Term;
import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.task.Value;

/**
 * A formula about a process and what it meets. Narrower inputs give narrower results, so that the law of not knowing holds
 * through it.
 */
public interface ContactFormula {

    /** Attribute it computes. */
    String attribute();

    /** The formula in words or signs. */
    String formula();

    /** Citation. */
    String source();

    /** Computes the value for one meeting. */
    Computed compute(Meeting meeting);

    /** A process and what it meets. */
    interface Meeting {

        /** What the process says, for instance {@code medium.flashPoint}; not applicable when the edition has no such thing. */
        Value process(String field);

        /** What the other says, for instance {@code kind.meltingPoint}. */
        Value other(String field);

        /** The upper end of the process's own window of a parameter; not applicable without one. */
        Value highest(String parameter);

        /** An assumption. */
        Value assumption(String id);

        /** All terms of a kind, for instance published sets of data. */
        Collection<Term> terms(String kind);

        /** Reference of a field of the process. */
        String processRef(String field);

        /** Reference of a field of the other. */
        String otherRef(String field);
    }
}

package org.washwright.drools;

/** What compiled rules call when they match. */
public interface MatchSink {

    /**
     * A certain match.
     *
     * @param rule id of the rule
     * @param facts a fact per pattern; null for {@code not} and {@code exists}
     */
    void certain(String rule, MatchFact... facts);

    /** A possible match, certain or not; parameters as above. */
    void possible(String rule, MatchFact... facts);
}

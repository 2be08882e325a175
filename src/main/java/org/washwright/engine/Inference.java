package org.washwright.engine;

import java.util.List;

/** A set of rules made ready to run. Safe for use by several threads at once. */
public interface Inference {

    /**
     * Runs the rules to the end.
     *
     * @param facts what is known, facts that are not sure included
     * @return every certain match, and every possible match that is not certain; with all conclusions drawn
     */
    Inferred run(List<Fact> facts);

    /**
     * What came of it.
     *
     * @param matches in order of rule and facts within each level
     * @param conclusions facts concluded, in order of their ids
     */
    record Inferred(List<Match> matches, List<Fact> conclusions) {}
}

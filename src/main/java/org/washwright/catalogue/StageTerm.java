package org.washwright.catalogue;

import java.util.List;

/**
 * A stage that a line can hold besides its main cleaning.
 *
 * @param term its term
 * @param position number that orders stages where no rule does; main stages stand at {@link #MAIN}
 * @param cleaning true when it removes soil
 * @param setting how it is run
 * @param alternatives stages that can take its place when its window closes
 */
public record StageTerm(Term term, int position, boolean cleaning, Setting setting, List<String> alternatives) {

    /** Position of the main cleaning stage. */
    public static final int MAIN = 100;

    /** Keeps a copy. */
    public StageTerm {
        alternatives = List.copyOf(alternatives);
    }

    /** Its id. */
    public String id() {
        return term.id();
    }
}

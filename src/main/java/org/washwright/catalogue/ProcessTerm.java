package org.washwright.catalogue;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A node of the process tree.
 *
 * @param term its term
 * @param parent id of the node above; empty for the root
 * @param group true for a node that is no process itself
 * @param nodes its own id and those of all nodes above
 * @param setting how its main stage is run
 */
public record ProcessTerm(Term term, String parent, boolean group, SortedSet<String> nodes, Setting setting) {

    /** Keeps a copy. */
    public ProcessTerm {
        nodes = Collections.unmodifiableSortedSet(new TreeSet<>(nodes));
    }

    /** Its id. */
    public String id() {
        return term.id();
    }
}

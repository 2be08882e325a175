package org.washwright.assist;

import java.util.List;

/**
 * What may stand at a place, usual things first.
 *
 * @param from offset in the text where it starts
 * @param to offset where it ends; what stands between is replaced
 * @param list the proposals
 */
public record Proposals(int from, int to, List<Proposal> list) {

    /** Keeps a copy. */
    public Proposals {
        list = List.copyOf(list);
    }

    static Proposals none(int at) {
        return new Proposals(at, at, List.of());
    }
}

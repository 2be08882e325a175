package org.washwright.explain.whynot;

/**
 * How far facts are from what is asked of them.
 *
 * @param failed conditions that fail
 * @param open conditions that are undecided
 */
record Cost(int failed, int open) implements Comparable<Cost> {

    static final Cost NONE = new Cost(0, 0);
    static final Cost ONE_OPEN = new Cost(0, 1);
    static final Cost ONE_FAILED = new Cost(1, 0);

    /** Facts that do not even meet are further away than any that do. */
    static final Cost APART = new Cost(1000, 0);

    Cost plus(Cost other) {
        return new Cost(failed + other.failed, open + other.open);
    }

    State state() {
        return failed > 0 ? State.FAILED : open > 0 ? State.UNDECIDED : State.FIRED;
    }

    @Override
    public int compareTo(Cost other) {
        return failed != other.failed ? Integer.compare(failed, other.failed) : Integer.compare(open, other.open);
    }
}

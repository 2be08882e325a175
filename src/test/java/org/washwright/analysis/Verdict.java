package org.washwright.analysis;

/**
 * What became of a fault.
 *
 * @param mutant the edition with the fault
 * @param by what found it; {@code NOBODY} for a miss
 * @param how the finding or the failed expectation; for an equivalent one, why it changes nothing
 */
record Verdict(Mutant mutant, By by, String how) {

    /** Who can find a fault. */
    enum By {
        CHECKER,
        EXAMINATION,
        CASES,
        EQUIVALENT,
        NOBODY
    }

    @Override
    public String toString() {
        return by + "  " + mutant.fault() + "  " + mutant.rule() + "  " + mutant.what() + "\n    " + how;
    }
}

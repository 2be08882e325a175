package org.washwright.explain.proof;

import java.util.List;

/**
 * What came of checking an answer.
 *
 * @param holds true when every byte of it follows from its request, the edition and the program
 * @param hash SHA-256 of the bytes that were checked, hexadecimal
 * @param derivedHash SHA-256 of the bytes that follow; empty when nothing could be derived
 * @param notes what to know of the check itself, in words
 * @param breaches what does not hold, the first steps of the derivation first; no more than were asked for
 * @param more how many further ones there are
 */
public record Verdict(
        boolean holds, String hash, String derivedHash, List<String> notes, List<Breach> breaches, int more) {

    /** Keeps copies. */
    public Verdict {
        notes = List.copyOf(notes);
        breaches = List.copyOf(breaches);
    }

    /** The verdict in one sentence. */
    public String sentence() {
        if (holds) {
            return "The proof holds: every statement follows from what was asked, by this edition and these formulas.";
        }
        int all = breaches.size() + more;
        return "The proof does not hold: " + all + (all == 1 ? " statement does" : " statements do") + " not follow.";
    }
}

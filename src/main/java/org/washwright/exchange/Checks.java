package org.washwright.exchange;

import java.util.List;
import org.washwright.analysis.KnownFinding;
import org.washwright.cases.Case;

/**
 * What an edition says of how it is to be checked. It shapes no answer.
 *
 * @param cases reference cases
 * @param known findings of the examination that its authors live with
 */
public record Checks(List<Case> cases, List<KnownFinding> known) {

    /** Says nothing. */
    public static final Checks NONE = new Checks(List.of(), List.of());

    /** Keeps copies. */
    public Checks {
        cases = List.copyOf(cases);
        known = List.copyOf(known);
    }
}

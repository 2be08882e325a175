package org.washwright.exchange;

import java.util.List;
import java.util.Optional;
import org.washwright.analysis.KnownFinding;
import org.washwright.cases.Case;
import org.washwright.grid.GridPlan;

/**
 * What an edition says of how it is to be checked. It shapes no answer.
 *
 * @param cases reference cases
 * @param known findings of the examination that its authors live with
 * @param grid what its grid is made over, if it says
 */
public record Checks(List<Case> cases, List<KnownFinding> known, Optional<GridPlan> grid) {

    /** Says nothing. */
    public static final Checks NONE = new Checks(List.of(), List.of(), Optional.empty());

    /** Keeps copies. */
    public Checks {
        cases = List.copyOf(cases);
        known = List.copyOf(known);
    }
}

package org.washwright.analysis;

import java.util.List;
import org.washwright.document.Place;

/**
 * A finding that the authors of an edition live with.
 *
 * @param kind what
 * @param rules the rules, in any order
 * @param why why they do
 * @param place where they say so
 */
public record KnownFinding(Finding.Kind kind, List<String> rules, String why, Place place) {

    /** Keeps an ordered copy. */
    public KnownFinding {
        rules = rules.stream().sorted().toList();
    }

    /** True when it speaks of this finding. */
    boolean fits(Finding finding) {
        return finding.kind() == kind
                && finding.rules().stream().sorted().toList().equals(rules);
    }
}

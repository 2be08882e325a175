package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.cases.Case;
import org.washwright.coverage.Coverage;
import org.washwright.coverage.CoverageCount;
import org.washwright.coverage.RuleCoverage;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.Starter;

/** The cases of the starter rulebook put every rule to the test, both ways. */
@Tag("slow")
class StarterCoverageIT {

    private static final String DATE = "2026-11-25";
    private static final Coverage COVERAGE = covered();

    /** Rules that stand guard over what a user may add and that no task of this edition can wake; docs/knowledge.md says why. */
    private static final Set<String> GUARDS = Set.of("US-01");

    private static Coverage covered() {
        List<Case> cases = new EditionReader(new DrlReader())
                .read(Starter.files())
                .checks()
                .cases();
        Assessor assessor = Starter.swept();
        CoverageCount count = new CoverageCount(Starter.edition());
        for (Case c : cases) {
            String date = c.asOf().orElse(DATE);
            count.add(c.id(), c.task(), date, assessor.outcome(c.task(), Wishes.on(date)));
        }
        return count.coverage();
    }

    @Test
    void every_rule_fires_in_one_case_and_one_change_holds_it_back_in_another_where_any_can() {
        Set<String> missing = new TreeSet<>();
        for (RuleCoverage r : COVERAGE.rules()) {
            if (r.fired() == 0 || r.heldBack().isEmpty() && !r.readsProcessesAlone()) {
                missing.add(r.rule().id());
            }
        }
        assertEquals(new TreeSet<>(GUARDS), missing);
    }

    @Test
    void nineteen_of_twenty_conditions_were_seen_both_true_and_false() {
        assertTrue(COVERAGE.tests() > 900);
        assertTrue(
                COVERAGE.bothWays() * 20 >= COVERAGE.tests() * 19,
                COVERAGE.bothWays() + " of " + COVERAGE.tests() + " conditions");
    }
}

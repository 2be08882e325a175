package org.washwright.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.cases.Flips;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** The numbers follow by hand from the tasks of each test. */
class CoverageTest {

    private static final Edition EDITION =
            SmallEdition.with("rule \"r\"\n@id(\"R\") @basis(\"common practice\")\nwhen\n"
                    + "$m : Material(hardness >= \"31 HRC\", substrate == \"substrate-a\")\nSoil(kind == \"soil-a\")\n"
                    + "then\ncaution(\"hazard-a\", \"So.\");\nend\n");

    private static final String DATE = "2026-11-25";

    private static RuleCoverage of(String... tasks) {
        Assessor assessor = Assessor.of(EDITION, ReferenceInterpreter.factory());
        CoverageCount count = new CoverageCount(EDITION);
        for (int i = 0; i < tasks.length; i++) {
            CleaningTask task = Starter.task(EDITION, "title: t\n" + tasks[i]);
            count.add("task-" + (i + 1), task, DATE, assessor.outcome(task, Wishes.on(DATE)));
        }
        return count.coverage().rules().get(0);
    }

    private static List<Long> counts(TestCoverage t) {
        return List.of(t.yes(), t.no(), t.open());
    }

    @Test
    void each_comparison_is_counted_for_each_entry_that_came_so_far() {
        RuleCoverage r = of(
                "materials: [{hardness: 40 HRC, substrate: substrate-a}]\nsoils: [soil-a, soil-b]\n",
                "materials: [{hardness: 20 HRC, substrate: substrate-a}]\nsoils: [soil-a]\n",
                "materials: [{hardness: 30..40 HRC, substrate: substrate-a}]\nsoils: [soil-a]\n");
        assertEquals(List.of(1, 1, 1), List.of(r.fired(), r.undecided(), r.failed()));
        assertEquals(List.of(1L, 1L, 1L), counts(r.tests().get(0)));
        assertEquals(List.of(3L, 0L, 0L), counts(r.tests().get(1)));
        // The second task never comes to its soil: its material failed before.
        assertEquals(List.of(2L, 1L, 0L), counts(r.tests().get(2)));
        assertEquals("never false", r.tests().get(1).missing());
        assertFalse(r.isComplete());
    }

    @Test
    void what_was_never_reached_or_never_decided_is_told_apart() {
        RuleCoverage none = of("materials: []\nsoils: []\n");
        assertEquals("never reached", none.tests().get(2).missing());
        RuleCoverage open = of("materials: [{hardness: 30..40 HRC}]\nsoils: []\n");
        assertEquals("never decided", open.tests().get(0).missing());
    }

    @Test
    void a_rule_seen_both_ways_in_all_its_conditions_and_held_back_by_one_change_is_complete() {
        String fires = "materials: [{hardness: 40 HRC, substrate: substrate-a}]\nsoils: [soil-a, soil-b]\n";
        String twoChanges = "materials: [{hardness: 20 HRC, substrate: substrate-b}]\nsoils: [soil-a, soil-b]\n";
        String oneChange = "materials: [{hardness: 20 HRC, substrate: substrate-a}]\nsoils: [soil-a, soil-b]\n";
        RuleCoverage partly = of(fires, twoChanges);
        assertEquals(Optional.empty(), partly.heldBack());
        assertFalse(partly.isComplete());
        RuleCoverage whole = of(fires, twoChanges, oneChange);
        assertEquals(Optional.of(new Flips.Pair("task-1", "task-3")), whole.heldBack());
        assertTrue(whole.isComplete());
    }

    @Test
    void one_entry_less_is_one_change_and_two_changes_are_not() {
        String fires = "materials: [{hardness: 40 HRC, substrate: substrate-a}]\nsoils: [soil-b, soil-a]\n";
        String less = "materials: [{hardness: 40 HRC, substrate: substrate-a}]\nsoils: [soil-b]\n";
        String other = "materials: []\nsoils: [soil-a]\n";
        assertEquals(
                Optional.of(new Flips.Pair("task-1", "task-2")), of(fires, less).heldBack());
        assertEquals(Optional.empty(), of(fires, other).heldBack());
    }
}

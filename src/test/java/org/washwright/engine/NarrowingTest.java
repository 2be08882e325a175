package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/**
 * The law of not knowing: whoever says more of a task never makes a rule that fired not fire, and never makes a match
 * possible that was impossible. Rules and tasks are made up; there is no number here to be looked up.
 */
class NarrowingTest {

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void sayingMoreNeverTakesBackWhatWasDecided(long seed) {
        NarrowingLaw.Outcome outcome = NarrowingLaw.tried(seed, 10);
        assertTrue(outcome.broken().isEmpty(), () -> String.join("\n", outcome.broken()));
        // Own earlier output, half of it: the steps have to happen and to decide something, else nothing was tried.
        assertTrue(outcome.steps() > 50, outcome.steps() + " steps");
        assertTrue(outcome.decidedAgainst() > 40, outcome.decidedAgainst() + " matches decided against");
    }

    @Test
    void theSameCheckSeesALogicThatTakesBack() {
        // A logic that takes the unknown for false would let "not" hold too early: play it by a match made certain.
        Edition edition = SmallEdition.with("""
                rule "r" @id("r") @basis("common practice") when not Soil(kind.oily == true) then caution("hazard-a", "So."); end
                """);
        Inference inference =
                ReferenceInterpreter.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        CleaningTask open = new CleaningTask("t", "", Map.of(), Map.of());
        CleaningTask oily =
                open.with(org.washwright.task.Group.SOILS, 0, "kind", org.washwright.task.Value.term("soil-a"));
        Inference.Inferred undecided =
                NarrowingLaw.run(inference, edition, open).orElseThrow();
        Inference.Inferred failed = NarrowingLaw.run(inference, edition, oily).orElseThrow();
        List<Match> tooSure = undecided.matches().stream()
                .map(m -> new Match(m.rule(), m.facts(), true))
                .toList();
        assertTrue(NarrowingLaw.broken(undecided, failed).isEmpty());
        assertFalse(NarrowingLaw.broken(new Inference.Inferred(tooSure, List.of()), failed)
                .isEmpty());
        assertFalse(NarrowingLaw.broken(failed, undecided).isEmpty());
    }
}

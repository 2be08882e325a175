package org.washwright.explain.change;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.washwright.document.Hashes;
import org.washwright.explain.vary.Effort;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;
import org.washwright.task.Group;

/** What is proposed is checked by typing it into the task; which changes are right is common practice, no source. */
class ChangeFinderTest {

    private static final ChangeFinder FINDER = new ChangeFinder(Starter.swept());

    private static Changes find(String task, Goal.Kind kind, String process, ChangeFinder.Scope scope) {
        return FINDER.find(task(task), Starter.WISHES, new Goal(kind, process), scope, n -> {});
    }

    private static CleaningTask task(String name) {
        return Starter.demoTasks().get(name);
    }

    private static ChangeFinder.Scope upTo(int most) {
        return new ChangeFinder.Scope(Set.of(), most, ChangeFinder.MOST_EVALUATIONS);
    }

    @Test
    void a_solvent_that_the_site_does_not_permit_comes_in_when_it_does() {
        Changes changes = find("zinc-housings.yaml", Goal.Kind.BRING_IN, "chlorinated-vapour", upTo(3));
        assertTrue(changes.search().complete(), changes.search().text().toString());
        assertEquals(1, changes.proposals().size());
        Changes.Proposal only = changes.proposals().get(0);
        assertEquals(Effort.SITE.name(), only.effort());
        Changes.Change change = only.changes().get(0);
        assertEquals(
                List.of("add", "/permittedSolvents/0/solventClass", "chlorinated"),
                List.of(change.way(), change.pointer(), change.value()));
        assertTrue(only.elsewhere().gained().stream().anyMatch(t -> t.process().equals("chlorinated-vapour")));
        assertEquals(List.of(), Promises.broken(changes, task("zinc-housings.yaml"), Starter.swept()));
    }

    @Test
    void a_dip_that_does_not_fit_a_line_in_takt_comes_in_where_the_plant_stands_elsewhere() {
        Changes changes = find("manifold.yaml", Goal.Kind.BRING_IN, "cold-solvent-dip", upTo(3));
        Changes.Change change = changes.proposals().get(0).changes().get(0);
        assertEquals("/lot/place", change.pointer());
        assertEquals("LOT", change.effort());
        assertEquals("in line", change.from());
        assertFalse(change.others().isEmpty());
        assertEquals(List.of(), Promises.broken(changes, task("manifold.yaml"), Starter.swept()));
    }

    @Test
    void what_no_change_can_reach_is_said_after_one_look() {
        Changes changes = find("light-guides.yaml", Goal.Kind.BRING_IN, "acetone-wipe", upTo(3));
        assertTrue(changes.search().impossible());
        assertTrue(changes.search().complete());
        assertEquals(List.of(), changes.proposals());
        assertEquals(2, changes.search().evaluations());
        assertTrue(changes.search().text().toString().contains("Held fast: Part; Materials"), changes.toString());
    }

    @Test
    void what_is_held_fast_may_be_let_go() {
        // The slender blind hole takes out what is sprayed on: demo-data/tasks/valve-block.yaml.
        assertTrue(find("valve-block.yaml", Goal.Kind.LET_STAND, "emulsion-spray", upTo(2))
                .search()
                .impossible());
        ChangeFinder.Scope freed = new ChangeFinder.Scope(Set.of(Group.FEATURES), 2, 3000);
        Changes changes = find("valve-block.yaml", Goal.Kind.LET_STAND, "emulsion-spray", freed);
        assertFalse(changes.search().fixed().contains("features"));
        assertTrue(changes.search().complete(), changes.search().text().toString());
        assertFalse(changes.proposals().isEmpty());
        changes.proposals().forEach(p -> assertEquals("PART", p.effort()));
        assertEquals(List.of(), Promises.broken(changes, task("valve-block.yaml"), Starter.swept()));
    }

    @Test
    void what_stands_already_needs_no_change() {
        String first = Starter.swept()
                .assess(task("zinc-housings.yaml"), Starter.WISHES)
                .answer()
                .candidates()
                .get(0)
                .process();
        assertTrue(
                find("zinc-housings.yaml", Goal.Kind.PUT_FIRST, first, upTo(3)).reached());
        assertTrue(
                find("zinc-housings.yaml", Goal.Kind.BRING_IN, first, upTo(3)).reached());
    }

    @Test
    void a_spent_budget_says_what_was_not_searched() {
        Changes changes =
                find("sintered-gears.yaml", Goal.Kind.BRING_IN, "plasma", new ChangeFinder.Scope(Set.of(), 3, 60));
        assertTrue(changes.search().evaluations() <= 60);
        assertFalse(changes.search().complete());
        Changes.Size last = changes.search().sizes().get(2);
        assertTrue(last.left() > 0
                && last.combinations() > last.left()
                && !last.among().isEmpty());
        // Every set is in exactly one of the three.
        changes.search().sizes().forEach(s -> assertEquals(s.sets(), s.passedOver() + s.tried() + s.left()));
        assertTrue(changes.search().text().toString().contains("not searched to the end"));
    }

    @Test
    void the_same_question_gets_the_same_bytes() {
        ChangeFinder.Scope short_ = new ChangeFinder.Scope(Set.of(), 2, 150);
        byte[] once = Hashes.canonical(find("steel-clips.yaml", Goal.Kind.DISPLACE_FIRST, "", short_));
        byte[] again = Hashes.canonical(find("steel-clips.yaml", Goal.Kind.DISPLACE_FIRST, "", short_));
        assertArrayEquals(once, again);
    }

    @Test
    void a_process_of_no_edition_is_refused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> find("steel-clips.yaml", Goal.Kind.BRING_IN, "none-such", upTo(1)));
    }
}

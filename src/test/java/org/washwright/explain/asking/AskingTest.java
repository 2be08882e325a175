package org.washwright.explain.asking;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.document.Hashes;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Each outcome that is claimed is held against a whole answer to the task in which it is so. */
class AskingTest {

    private static final Asking ASKING = new Asking(Starter.swept());

    private static FindOut ask(CleaningTask task, int evaluations) {
        return ASKING.ask(task, Starter.WISHES, evaluations, n -> {});
    }

    @ParameterizedTest
    @ValueSource(strings = {"steel-clips.yaml", "injector-bodies.yaml", "sensor-housings.yaml", "welded-frame.yaml"})
    void every_outcome_is_what_an_answer_says_of_the_task_with_that_value(String name) {
        CleaningTask task = Starter.demoTasks().get(name);
        FindOut found = ask(task, Asking.MOST_EVALUATIONS);
        assertEquals(List.of(), found.notTried());
        assertFalse(found.matters().isEmpty() && found.same().isEmpty());
        assertEquals(List.of(), Claims.broken(found, task, Starter.swept()));
    }

    @Test
    void the_hardness_that_straddles_two_lines_is_what_to_find_out() {
        FindOut found = ask(Starter.demoTasks().get("steel-clips.yaml"), Asking.MOST_EVALUATIONS);
        // The demo says of itself that pickling and current hang on the real hardness; its question is the attribute's
        // own.
        assertTrue(found.verdict().contains("How hard is it (HRC)?"), found.verdict());
        FindOut.Unknown hardness = found.matters().get(0);
        assertEquals("/materials/0/hardness", hardness.pointer());
        assertEquals("30 to 40 HRC", hardness.now());
        assertEquals(7, found.open());
        // The mean, over the outcomes, of the processes that each one decides.
        double mean = hardness.outcomes().stream()
                .mapToInt(t -> t.decided().size())
                .average()
                .orElseThrow();
        assertEquals(mean, hardness.decides(), 1e-12);
    }

    @Test
    void the_same_whatever_it_is_holds_for_every_term_of_the_catalogue() {
        CleaningTask known = Starter.demoTasks().get("welded-frame.yaml");
        int same = 0;
        for (String attribute : List.of("shape", "assembly")) {
            CleaningTask task = known.with(Group.PART, 0, attribute, Value.UNKNOWN);
            String pointer = "/part/" + attribute;
            FindOut found = ask(task, Asking.MOST_EVALUATIONS);
            FindOut.Unknown unknown = java.util.stream.Stream.concat(found.matters().stream(), found.same().stream())
                    .filter(u -> u.pointer().equals(pointer))
                    .findFirst()
                    .orElseThrow();
            FieldType.TermType type = (FieldType.TermType)
                    Group.PART.attribute(attribute).orElseThrow().type();
            TreeSet<String> all = new TreeSet<>(Starter.edition().terms(type.kind()));
            TreeSet<String> tried = new TreeSet<>();
            unknown.outcomes().forEach(t -> tried.add(t.value()));
            assertEquals(all, tried);
            boolean isSame = all.stream()
                    .allMatch(term -> Claims.sameAnswer(
                            task, task.with(Group.PART, 0, attribute, Value.term(term)), Starter.swept()));
            assertEquals(isSame, unknown.isSame(), pointer);
            same += isSame ? 1 : 0;
        }
        assertTrue(same > 0, "one of them should not matter, else this shows nothing");
    }

    @Test
    void a_spent_budget_says_what_was_not_tried() {
        // Its one unknown has three outcomes; the task itself takes one evaluation.
        FindOut part = ask(Starter.demoTasks().get("steel-clips.yaml"), 3);
        FindOut.Unknown hardness = part.matters().get(0);
        assertEquals(2, hardness.outcomes().size());
        assertEquals(1, hardness.left().size());
        assertTrue(hardness.text().contains("1 were not tried"), hardness.text());
        FindOut none = ask(Starter.demoTasks().get("steel-clips.yaml"), 1);
        assertEquals(List.of("Carbon steel: How hard is it (HRC)?"), none.notTried());
        assertEquals("Nothing that was tried has to be found out; some was not tried.", none.verdict());
    }

    @Test
    void a_task_of_which_all_is_said_has_nothing_to_find_out() {
        FindOut found = ask(Starter.demoTasks().get("bearing-rings.yaml"), Asking.MOST_EVALUATIONS);
        assertEquals("Everything that can be said of the task is said.", found.verdict());
        assertEquals(1, found.evaluations());
    }

    @Test
    void the_same_task_gets_the_same_bytes() {
        CleaningTask task = Starter.demoTasks().get("injector-bodies.yaml");
        assertArrayEquals(Hashes.canonical(ask(task, 3000)), Hashes.canonical(ask(task, 3000)));
    }
}

package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.task.CleaningTask;

/** What is said of the unknown is held against the answers themselves: no expected value comes from elsewhere. */
class WantedTest {

    private static final int TASKS = 12;

    @Test
    void of_a_task_of_which_nothing_is_known_material_and_soil_are_asked_first() {
        Wanted wanted = wanted("title: Nothing known");
        // Common practice, no source: nobody chooses a cleaning process before these two are known.
        assertTrue(wanted.first().stream()
                .limit(2)
                .map(Wanted.First::ref)
                .toList()
                .containsAll(List.of("soils", "materials")));
        FrozenAnswer answer = Starter.interpreted().assess(Starter.task("title: Nothing known"), Starter.WISHES);
        assertEquals(
                List.of(),
                answer.answer().candidates().stream()
                        .filter(c -> c.status().equals("recommended"))
                        .toList(),
                "no process is recommended for a task of which nothing is known");
        assertTrue(wanted.first().size() <= answer.answer().questions().size());
        wanted.first().forEach(f -> assertTrue(f.ref().matches("[A-Za-z]+(/[A-Za-z-]+(/value)?)?"), f.ref()));
    }

    @Test
    void hardness_matters_for_steel_before_plating_and_does_not_for_brass() {
        String task = "title: x\nmaterials: [{substrate: %s}]\nfollowing: {operation: electroplating}";
        Wanted.Note steel = wanted(task.formatted("carbon-steel"))
                .note("materials/0/hardness")
                .orElseThrow();
        assertEquals(Wanted.Kind.DECIDES, steel.kind());
        assertTrue(steel.brief().contains("acid pickling"), steel.brief());
        Wanted.Note brass =
                wanted(task.formatted("brass")).note("materials/0/hardness").orElseThrow();
        assertEquals(Wanted.Kind.SETTLED, brass.kind());
        assertTrue(brass.text().startsWith("Not needed unless “embrittled by hydrogen"), brass.text());
        assertTrue(brass.text().contains("hydrogen"), brass.text());
    }

    @Test
    void one_thing_given_on_one_of_several_scales_is_asked_once() {
        List<String> asked = wanted("title: x\nmaterials: [{substrate: carbon-steel}]").first().stream()
                .map(Wanted.First::ref)
                .filter(r -> r.startsWith("materials/0/"))
                .toList();
        assertTrue(asked.contains("materials/0/hardness"), asked.toString());
        assertTrue(!asked.contains("materials/0/vickersHardness"), asked.toString());
    }

    @Test
    void whatever_is_said_not_to_matter_changes_no_process_no_stage_no_point_and_no_caution_when_it_is_given() {
        int checked = 0;
        for (int seed = 0; seed < TASKS; seed++) {
            TaskMaker maker = new TaskMaker(new Random(seed), Starter.edition());
            CleaningTask task = maker.task();
            Optional<Wanted> wanted = tried(task);
            for (int i = 0; i < 20 && wanted.isPresent(); i++) {
                Optional<TaskMaker.Narrowed> narrowed = maker.narrower(task);
                String ref = narrowed.map(n -> ref(n.what())).orElse("");
                Optional<Wanted.Note> note = wanted.get().note(ref);
                boolean idle = note.isPresent()
                        && (note.get().kind() == Wanted.Kind.UNREAD
                                || note.get().kind() == Wanted.Kind.SETTLED);
                if (idle && tried(narrowed.get().task()).isPresent()) {
                    assertEquals(
                            outcome(task),
                            outcome(narrowed.get().task()),
                            "seed " + seed + ": " + ref + " " + note.get());
                    checked++;
                }
            }
        }
        assertTrue(checked >= 20, "only " + checked + " notes were held against answers");
    }

    /** The reference that a pointer of a task document leads to. */
    private static String ref(String what) {
        String ref = what.replaceFirst("^/", "").replaceFirst(" .*", "");
        return ref.startsWith("attributes/") ? ref + "/value" : ref;
    }

    private static Map<String, Object> outcome(CleaningTask task) {
        Answer answer = Starter.interpreted().assess(task, Starter.WISHES).answer();
        Map<String, Object> out = new TreeMap<>();
        answer.candidates()
                .forEach(c -> out.put(
                        c.process(),
                        List.of(
                                c.status(),
                                c.stages().stream().map(Answer.Stage::name).toList(),
                                c.areas().stream()
                                        .map(a -> a.low() + " " + a.high())
                                        .toList())));
        answer.ruledOut().forEach(r -> out.put(r.process(), "ruled out"));
        List<String> cautions = new ArrayList<>();
        answer.cautions().forEach(c -> cautions.add(c.text()));
        out.put("cautions", cautions);
        return out;
    }

    private static Optional<Wanted> tried(CleaningTask task) {
        try {
            return Optional.of(Starter.interpreted().wanted(task, Starter.WISHES));
        } catch (RefusedTask contradiction) {
            // Random values of one material contradict each other now and then; such a task has no answer to compare.
            return Optional.empty();
        }
    }

    private static Wanted wanted(String yaml) {
        return Starter.interpreted().wanted(Starter.task(yaml), Starter.WISHES);
    }
}

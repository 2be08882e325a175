package org.washwright.impact.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.TaskMaker;
import org.washwright.impact.meaning.State;
import org.washwright.impact.meaning.States;
import org.washwright.impact.meaning.Subject;
import org.washwright.rule.Edition;
import org.washwright.task.TaskWriter;

/** What the replay says is held against answers of the plain interpreter, taken apart here without the comparison. */
class ReplayingTest {

    private static final String DAY = "2026-11-25";
    private static final int TASKS = 40;

    private static final String[] EFFECTS = {
        "caution(\"hazard-a\", \"%s\");",
        "ruleOut(\"water\", \"main\", \"%s\");",
        "support(\"oil\", \"works\", 2, \"%s\");",
        "oppose(\"water-a\", \"fine\", 1, \"%s\");",
        "limit(\"water-b\", \"main\", \"temperature\", max(\"70 °C\"), \"%s\");",
        "require(\"oil\", \"last\", after(\"main\"), \"%s\");",
        "conclude(\"conclusion-a\", \"%s\");",
        "verify(\"test-method-a\", \"%s\");"
    };
    private static final String[] CONDITIONS = {
        "Material(substrate == \"substrate-a\")", "Material(substrate.rusts == true)", "Soil(kind == \"soil-b\")",
        "Part(mass >= \"1 kg\")", "Soil(kind.oily == true)", "Following(operation == \"operation-a\")",
        "Conclusion(id == \"conclusion-a\")"
    };

    /** A rule by the numbers of its condition and effect; what concludes does not wait for the conclusion. */
    private record Drawn(String id, int condition, int effect, String reason) {
        static Drawn of(String id, Random random) {
            int effect = random.nextInt(EFFECTS.length);
            int conditions = EFFECTS[effect].startsWith("conclude") ? CONDITIONS.length - 1 : CONDITIONS.length;
            return new Drawn(id, random.nextInt(conditions), effect, "Reason of " + id + ".");
        }

        String drl() {
            return "rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\")\nwhen " + CONDITIONS[condition]
                    + "\nthen " + EFFECTS[effect].formatted(reason) + " end\n";
        }
    }

    private static State state(List<Drawn> rules) {
        Map<String, String> texts = SmallEdition.texts();
        texts.put("rules/all.drl", rules.stream().map(Drawn::drl).collect(Collectors.joining()));
        return States.read(texts);
    }

    private static List<Drawn> drawn(Random random) {
        List<Drawn> out = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            out.add(Drawn.of("R-" + i, random));
        }
        return out;
    }

    private static List<Trial> tasks(Random random, Edition edition) {
        TaskMaker maker = new TaskMaker(random, edition);
        List<Trial> out = new ArrayList<>();
        for (int i = 0; i < TASKS; i++) {
            byte[] document = Hashes.canonical(TaskWriter.data(maker.task(), edition));
            out.add(Trial.of("task-" + i, "task " + i, Origin.FILE, Optional.empty(), document));
        }
        return out;
    }

    /** What an answer says, without numbers of firings; empty when the task is refused. */
    private static Optional<String> said(Assessor interpreter, Trial trial) {
        try {
            return trial.reader()
                    .read(interpreter.edition(), new Diagnostics())
                    .map(task -> said(interpreter.assess(task, Wishes.on(DAY)).answer()));
        } catch (RefusedTask e) {
            return Optional.empty();
        }
    }

    private static String said(Answer a) {
        List<String> out = new ArrayList<>();
        a.candidates().forEach(c -> {
            out.add(c.process() + " " + c.status() + " " + c.low() + ".." + c.high());
            c.stages().forEach(s -> {
                out.add("stage " + s.stage());
                s.windows().forEach(w -> out.add(w.parameter() + " " + w.low() + ".." + w.high()));
            });
        });
        a.ruledOut().forEach(r -> out.add(r.process() + " is out"));
        Set<String> firings = new TreeSet<>();
        a.firings()
                .forEach(f -> firings.add(
                        f.rule() + " " + f.certain() + " " + f.line() + " " + f.matched() + " " + f.findings()));
        return out + " " + firings;
    }

    private static Assessor interpreter(State state) {
        return Assessor.of(state.edition(), ReferenceInterpreter.factory());
    }

    private static Impact impact(State before, State after, List<Trial> trials) {
        return new Replaying(before, after, SweepInference.factory(), DAY).of(trials, n -> {});
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void the_answers_said_to_change_are_those_that_the_interpreter_gives_otherwise(int seed) {
        Random random = new Random(seed);
        List<Drawn> rules = drawn(random);
        List<Drawn> edited = new ArrayList<>(rules);
        edited.set(0, Drawn.of("R-0", random));
        edited.remove(3);
        State before = state(rules);
        State after = state(edited);
        List<Trial> trials = tasks(random, before.edition());
        Assessor old = interpreter(before);
        Assessor now = interpreter(after);
        Set<String> differ = new TreeSet<>();
        Set<String> refused = new TreeSet<>();
        for (Trial t : trials) {
            Optional<String> a = said(old, t);
            Optional<String> b = said(now, t);
            if (a.isEmpty() || b.isEmpty()) {
                refused.add(t.key());
            } else if (!a.equals(b)) {
                differ.add(t.key());
            }
        }
        Impact impact = impact(before, after, trials);
        assertEquals(differ, keys(impact));
        assertEquals(
                refused,
                impact.refused().stream().map(Impact.Refused::key).collect(Collectors.toCollection(TreeSet::new)));
        assertEquals(TASKS - differ.size() - refused.size(), impact.same());
        assertTrue(impact.sample().stream().allMatch(differ::contains));
        assertEquals(Math.min(Sample.MOST, differ.size()), impact.sample().size());
        assertEquals(impact, impact(before, after, trials), "the same tasks give the same impact");
    }

    private static Set<String> keys(Impact impact) {
        return impact.changed().stream().map(Impact.AnswerChange::key).collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(ints = {21, 22, 23, 24})
    void a_rule_that_is_not_named_behind_a_changed_answer_could_have_stayed_as_it_was(int seed) {
        Random random = new Random(seed);
        List<Drawn> rules = drawn(random);
        List<Drawn> first = new ArrayList<>(rules);
        first.set(1, Drawn.of("R-1", random));
        List<Drawn> both = new ArrayList<>(first);
        both.set(2, Drawn.of("R-2", random));
        List<Drawn> second = new ArrayList<>(rules);
        second.set(2, both.get(2));
        State before = state(rules);
        State after = state(both);
        List<Trial> trials = tasks(random, before.edition());
        Assessor all = interpreter(after);
        Map<String, Assessor> without = Map.of("R-1", interpreter(state(second)), "R-2", interpreter(state(first)));
        Map<String, Trial> byKey = new TreeMap<>();
        trials.forEach(t -> byKey.put(t.key(), t));
        for (Impact.AnswerChange c : impact(before, after, trials).changed()) {
            Set<String> named = c.by().stream().map(By::id).collect(Collectors.toSet());
            assertFalse(named.isEmpty(), c::toString);
            without.forEach((rule, assessor) -> {
                if (!named.contains(rule)) {
                    assertEquals(said(all, byKey.get(c.key())), said(assessor, byKey.get(c.key())), rule + " " + c);
                }
            });
        }
    }

    private static Map<String, String> texts(String drl) {
        Map<String, String> texts = SmallEdition.texts();
        texts.put("rules/all.drl", drl);
        texts.put("cases/c.yaml", """
                cases:
                  - id: rusty
                    title: What rusts
                    task: {title: t, part: {mass: 1 kg}, materials: [{substrate: substrate-a}]}
                    expect: {fires: [S-01]}
                  - id: dull
                    title: What does not rust
                    task: {title: t, part: {mass: 1 kg}, materials: [{substrate: substrate-b}]}
                    expect: {doesNotFire: [S-01]}
                """);
        return texts;
    }

    private static String rule(String id, String condition, String effect) {
        return "rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\")\nwhen " + condition + "\nthen "
                + effect + " end\n";
    }

    private static final String RUSTS =
            rule("S-01", "Material(substrate.rusts == true)", "caution(\"hazard-a\", \"It rusts.\");");
    private static final String FAR = rule("S-09", "Part(mass >= \"900 kg\")", "caution(\"hazard-b\", \"Heavy.\");");

    private static Impact ofCases(Map<String, String> before, Map<String, String> after) {
        State old = States.read(before);
        State now = States.read(after);
        return impact(old, now, Trial.ofCases(old, now));
    }

    @Test
    void a_case_that_held_and_fails_is_told_with_what_was_found_and_a_rule_that_reaches_nothing_is_named() {
        Impact impact = ofCases(
                texts(RUSTS + FAR),
                texts(RUSTS.replace("rusts == true", "rusts == false") + FAR.replace("900 kg", "800 kg")));
        assertEquals(2, impact.tried());
        assertEquals(
                List.of("dull", "rusty"),
                impact.cases().stream().map(Impact.CaseTurn::id).toList());
        Impact.CaseTurn turn = impact.cases().get(1);
        assertEquals("holds", turn.before());
        assertEquals("fails", turn.after());
        assertFalse(turn.edited());
        assertTrue(turn.unmet().get(0).contains("S-01"), turn.toString());
        Impact.Part far = impact.parts().stream()
                .filter(p -> p.by().id().equals("S-09"))
                .findFirst()
                .orElseThrow();
        assertEquals(0, far.reached());
        assertTrue(far.touchesNothing());
        assertEquals(
                "2 of 2 tried change; 2 reference cases fail that did not; 1 part of the change leaves every answer as it was.",
                impact.sentence());
    }

    @Test
    void a_new_name_of_a_rule_changes_no_answer_and_another_reason_changes_words_alone() {
        Impact renamed = ofCases(
                texts(RUSTS),
                texts(RUSTS.replace("S-01", "S-77")).entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey, e -> e.getValue().replace("[S-01]", "[S-77]"))));
        assertEquals("No answer of 2 tried changes.", renamed.sentence());
        assertEquals(2, renamed.same());
        Impact reworded = ofCases(texts(RUSTS), texts(RUSTS.replace("It rusts.", "It rusts away.")));
        assertEquals("No answer of 2 tried changes; 1 differs in words alone.", reworded.sentence());
        assertEquals(Weight.WORDING, reworded.changed().get(0).weight());
        assertEquals(
                List.of(new By(Subject.RULE, "S-01", "S-01")),
                reworded.changed().get(0).by());
    }

    @Test
    void a_task_that_only_one_edition_takes_is_told_with_what_is_wrong() {
        Map<String, String> before = texts(RUSTS);
        Map<String, String> after = new TreeMap<>(before);
        after.put(
                "catalogue/soil-terms.yaml",
                after.get("catalogue/soil-terms.yaml").replace("{id: soil-c,", "{id: soil-d,"));
        State old = States.read(before);
        State now = States.read(after);
        byte[] task = "title: t\nsoils: [soil-c]\n".getBytes(StandardCharsets.UTF_8);
        Impact impact = impact(old, now, List.of(Trial.of("k", "t", Origin.KEPT, Optional.empty(), task)));
        assertEquals(
                "No answer of the one tried changes; 1 task is refused only now.",
                impact.sentence().replaceAll("; \\d part.*", "."));
        Impact.Refused refused = impact.refused().get(0);
        assertEquals(List.of(), refused.before());
        assertTrue(refused.after().get(0).contains("soil-c"), refused.toString());
        assertTrue(refused.onlyNow());
    }

    @Test
    void an_assumption_a_weight_and_a_window_are_named_behind_the_answers_they_change() {
        Map<String, String> before = texts(RUSTS);
        Map<String, String> after = new TreeMap<>(before);
        after.put(
                "grading.yaml",
                before.get("grading.yaml")
                        .replace("name: fine, weight: 1, start: 40", "name: fine, weight: 1, start: 90"));
        Set<String> named = ofCases(before, after).changed().stream()
                .flatMap(c -> c.by().stream().map(By::id))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("quality/fine"), named);
        after = new TreeMap<>(before);
        after.put(
                "catalogue/process-terms.yaml",
                before.get("catalogue/process-terms.yaml")
                        .replace(
                                "phrase: wash, windows: {temperature: 20..80 °C}",
                                "phrase: wash, windows: {temperature: 20..50 °C}"));
        named = ofCases(before, after).changed().stream()
                .flatMap(c -> c.by().stream().map(By::id))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("process/water-a"), named);
    }
}

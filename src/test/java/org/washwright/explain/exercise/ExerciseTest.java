package org.washwright.explain.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.generate.Starter;

/** What is expected follows from the answers themselves: an exercise asks for what they say. */
class ExerciseTest {

    /** An exercise with what it is held against. */
    private record Setting(Exercise exercise, Comparison comparison, Answer answer) {}

    private static final Map<String, Setting> ALL = all();

    private static Map<String, Setting> all() {
        Map<String, Setting> out = new TreeMap<>();
        Starter.demoTasks().forEach((name, task) -> {
            Answer answer = Starter.swept().assess(task, Starter.WISHES).answer();
            Exercise exercise = new ExerciseMaker(answer, Starter.edition()).make("Try", "", 7, List.of());
            out.put(
                    name,
                    new Setting(
                            exercise,
                            new Comparison(
                                    exercise,
                                    answer,
                                    Starter.edition(),
                                    Starter.swept()
                                            .outcome(task, Starter.WISHES)
                                            .facts()),
                            answer));
        });
        return out;
    }

    @Test
    void whoever_knows_the_answer_has_everything_right() {
        ALL.forEach((name, set) -> {
            Feedback feedback = set.comparison.of(set.comparison.key());
            assertEquals(feedback.statusesOf(), feedback.statuses(), name);
            assertEquals(feedback.reasonsOf(), feedback.reasons(), name);
            assertEquals(0, feedback.inVain(), name);
            assertTrue(feedback.firstRight(), name);
            assertTrue(feedback.processes().stream().allMatch(Feedback.Judged::isAllRight), name);
            assertTrue(feedback.reasonsOf() >= feedback.statusesOf(), name);
        });
    }

    @Test
    void whoever_says_nothing_misses_everything() {
        ALL.forEach((name, set) -> {
            Feedback feedback = set.comparison.of(new Prediction("", List.of()));
            assertEquals(0, feedback.statuses(), name);
            assertEquals(0, feedback.reasons(), name);
            assertEquals(0, feedback.inVain(), name);
            assertFalse(feedback.firstRight(), name);
            assertEquals(
                    feedback.reasonsOf(),
                    feedback.processes().stream()
                            .mapToInt(p -> p.missed().size())
                            .sum());
            assertEquals(set.exercise.processes().size(), feedback.statusesOf(), name);
        });
    }

    @Test
    void one_wrong_status_and_one_reason_left_out_count_as_one_each() {
        ALL.forEach((name, set) -> {
            Prediction key = set.comparison.key();
            List<Prediction.Guess> changed = new ArrayList<>(key.guesses());
            Prediction.Guess first = changed.get(0);
            String other = first.status().equals("ruled out") ? "recommended" : "ruled out";
            changed.set(
                    0,
                    new Prediction.Guess(
                            first.process(),
                            other,
                            first.reasons().subList(1, first.reasons().size()),
                            "because"));
            Feedback feedback = set.comparison.of(new Prediction(key.first(), changed));
            assertEquals(feedback.statusesOf() - 1, feedback.statuses(), name);
            assertEquals(feedback.reasonsOf() - 1, feedback.reasons(), name);
            Feedback.Judged judged = feedback.processes().get(0);
            assertEquals(other, judged.predicted());
            assertEquals(first.status(), judged.actual());
            assertEquals(
                    List.of(first.reasons().get(0)),
                    judged.missed().stream().map(Feedback.Reason::rule).toList());
            assertEquals("because", judged.words());
        });
    }

    @Test
    void every_reason_offered_is_true_or_a_rule_that_did_not_fire_and_says_why_not() {
        ALL.forEach((name, set) -> {
            Set<String> fired =
                    set.answer.firings().stream().map(Answer.Firing::rule).collect(Collectors.toSet());
            Prediction key = set.comparison.key();
            List<Prediction.Guess> all = set.exercise.processes().stream()
                    .map(a -> new Prediction.Guess(
                            a.process(),
                            "recommended",
                            a.choices().stream().map(Exercise.Choice::rule).toList(),
                            ""))
                    .toList();
            Feedback feedback = set.comparison.of(new Prediction("", all));
            assertEquals(feedback.reasonsOf(), feedback.reasons(), name);
            for (Feedback.Judged judged : feedback.processes()) {
                assertTrue(judged.inVain().size() >= 3, name + " " + judged.process());
                judged.inVain().forEach(r -> {
                    assertFalse(fired.contains(r.rule()), r.rule());
                    assertFalse(r.whyNot().isBlank(), r.rule());
                    assertEquals(List.of(), r.firings());
                });
                judged.right().forEach(r -> {
                    assertTrue(fired.contains(r.rule()), r.rule());
                    assertFalse(r.firings().isEmpty(), r.rule());
                    assertFalse(r.text().isBlank(), r.rule());
                    assertFalse(r.basis().isBlank(), r.rule());
                });
            }
            assertEquals(
                    key.guesses().stream().mapToInt(g -> g.reasons().size()).sum(), feedback.reasonsOf(), name);
        });
    }

    @Test
    void true_reasons_of_a_process_that_is_ruled_out_are_rules_that_its_verdict_cites() {
        Setting set = ALL.get("bearing-rings.yaml");
        Map<Integer, String> rules =
                set.answer.firings().stream().collect(Collectors.toMap(Answer.Firing::n, Answer.Firing::rule));
        int looked = 0;
        for (Prediction.Guess guess : set.comparison.key().guesses()) {
            if (guess.status().equals("ruled out")) {
                Set<String> cited = set.answer.ruledOut().stream()
                        .filter(r -> r.process().equals(guess.process()))
                        .flatMap(r -> r.reasons().stream())
                        .flatMap(s -> s.firings().stream())
                        .map(rules::get)
                        .collect(Collectors.toSet());
                assertTrue(cited.containsAll(guess.reasons()), guess.process());
                looked++;
            }
        }
        assertTrue(looked > 0);
    }

    @Test
    void the_usual_choice_mixes_what_is_recommended_conditional_and_ruled_out_and_holds_the_first() {
        ALL.forEach((name, set) -> {
            List<Prediction.Guess> key = set.comparison.key().guesses();
            assertTrue(key.size() <= Exercise.MOST_PROCESSES, name);
            Set<String> there = new HashSet<>();
            set.answer.candidates().forEach(c -> there.add(c.status()));
            if (!set.answer.ruledOut().isEmpty()) {
                there.add("ruled out");
            }
            assertEquals(there, key.stream().map(Prediction.Guess::status).collect(Collectors.toSet()), name);
            if (!set.answer.candidates().isEmpty()) {
                assertEquals(
                        set.answer.candidates().get(0).process(),
                        set.comparison.key().first(),
                        name);
            }
        });
    }

    @Test
    void an_exercise_is_the_same_for_the_same_seed_and_another_for_another() {
        Answer answer = ALL.get("manifold.yaml").answer;
        ExerciseMaker maker = new ExerciseMaker(answer, Starter.edition());
        List<String> processes = List.of(answer.candidates().get(0).process());
        assertEquals(maker.make("T", "", 1, processes), maker.make("T", "", 1, processes));
        assertNotEquals(
                maker.make("T", "", 1, processes).processes(),
                maker.make("T", "", 2, processes).processes());
    }

    @Test
    void an_exercise_and_the_task_in_words_hold_nothing_of_what_the_answer_says() {
        ALL.forEach((name, set) -> {
            String asked = new String(Hashes.canonical(set.exercise), StandardCharsets.UTF_8)
                    + new String(Hashes.canonical(TaskInWords.of(set.answer)), StandardCharsets.UTF_8);
            Prediction.STATUSES.forEach(s -> assertFalse(asked.contains("\"" + s + "\""), name));
            assertFalse(asked.contains(set.answer.headline().sentence()), name);
            set.answer.ruledOut().stream()
                    .flatMap(r -> r.reasons().stream())
                    .forEach(s -> assertFalse(asked.contains(s.text()), s.text()));
            List<String> names =
                    set.exercise.processes().stream().map(Exercise.Asked::name).toList();
            assertEquals(names.stream().sorted().toList(), names, "the order tells nothing");
        });
    }

    @Test
    void the_task_in_words_says_what_was_given_and_what_is_not_known() {
        TaskInWords task = TaskInWords.of(ALL.get("bearing-rings.yaml").answer);
        List<TaskInWords.Line> material = task.parts().stream()
                .filter(p -> p.name().equals("bearing steel"))
                .findFirst()
                .orElseThrow()
                .lines();
        // As demo-data/tasks/bearing-rings.yaml gives it.
        assertTrue(material.contains(new TaskInWords.Line("hardness", "62 HRC", true)), material.toString());
    }

    @Test
    void a_filled_in_template_is_read_as_what_was_filled_in() {
        ALL.forEach((name, set) -> {
            Prediction key = set.comparison.key();
            StringBuilder filled = new StringBuilder();
            String process = "";
            for (String line : PredictionTemplate.of(set.exercise).lines().toList()) {
                String text = line.strip();
                if (text.startsWith("- process: ")) {
                    process = text.substring("- process: ".length());
                }
                Prediction.Guess guess = key.guess(process).orElse(Prediction.Guess.nothing(process));
                if (text.equals("first:")) {
                    line += " " + key.first();
                } else if (text.equals("status:")) {
                    line += " " + guess.status();
                } else if (text.startsWith("# - ")
                        && guess.reasons().contains(text.substring(4).split(" ")[0])) {
                    line = line.replaceFirst("# - ", "- ");
                }
                filled.append(line).append('\n');
            }
            Diagnostics diagnostics = new Diagnostics();
            Prediction read = PredictionReader.read(
                            "p.yaml", filled.toString().getBytes(StandardCharsets.UTF_8), set.exercise, diagnostics)
                    .orElseThrow(() -> new AssertionError(name + diagnostics.all()));
            Feedback feedback = set.comparison.of(read);
            assertEquals(set.comparison.of(key), feedback, name);
        });
    }

    @Test
    void a_wrong_prediction_is_refused_with_every_error_and_its_place() {
        Exercise exercise = new Exercise(
                "T",
                "",
                1,
                List.of(
                        new Exercise.Asked("water-a", "water A", List.of(new Exercise.Choice("R-1", "one"))),
                        new Exercise.Asked("water-b", "water B", List.of(new Exercise.Choice("R-2", "two")))));
        Diagnostics diagnostics = new Diagnostics();
        String text = "first: oil-a\npredictions:\n"
                + "  - {process: water-a, status: forbidden, reasons: [R-2], mood: good}\n"
                + "  - {process: water-c, status: conditional}\n"
                + "  - {status: conditional}\n";
        assertTrue(PredictionReader.read("p.yaml", text.getBytes(StandardCharsets.UTF_8), exercise, diagnostics)
                .isEmpty());
        List<String> found = diagnostics.all().stream()
                .map(d -> d.place().line() + " " + d.value())
                .toList();
        assertTrue(found.contains("1 oil-a"), found.toString());
        assertTrue(found.contains("3 forbidden"), found.toString());
        assertTrue(found.contains("3 R-2"), found.toString());
        assertTrue(found.contains("3 mood"), found.toString());
        assertTrue(found.contains("4 water-c"), found.toString());
        String all = diagnostics.all().toString();
        assertTrue(all.contains("lacks \"process\"") && all.contains("lacks \"water-b\""), all);
    }

    @Test
    void feedback_survives_being_written_and_read() throws java.io.IOException {
        Setting set = ALL.get("valve-block.yaml");
        Feedback feedback = set.comparison.of(set.comparison.key());
        assertEquals(feedback, Hashes.read(Hashes.canonical(feedback), Feedback.class));
        assertEquals(set.exercise, Hashes.read(Hashes.canonical(set.exercise), Exercise.class));
    }
}

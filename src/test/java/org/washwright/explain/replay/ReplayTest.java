package org.washwright.explain.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.generate.Starter;

/** Every expectation follows from the answer itself: a replay may leave nothing out and make nothing up. */
class ReplayTest {

    private static final Map<String, Answer> ANSWERS = answers();

    private static Map<String, Answer> answers() {
        Map<String, Answer> out = new TreeMap<>();
        Starter.demoTasks()
                .forEach((name, task) -> out.put(
                        name, Starter.swept().assess(task, Starter.WISHES).answer()));
        return out;
    }

    @Test
    void after_the_last_step_exactly_the_facts_of_the_answer_are_known() {
        assertEquals(16, ANSWERS.size());
        ANSWERS.forEach((name, answer) -> {
            Replay replay = Replay.of(answer);
            Set<String> known = replay.known(replay.size());
            assertEquals(refs(answer), known, name);
        });
    }

    @Test
    void every_firing_is_told_exactly_once_and_in_the_order_of_its_level() {
        ANSWERS.forEach((name, answer) -> {
            List<Step> firings = Replay.of(answer).steps().stream()
                    .filter(s -> s.kind() == Step.Kind.FIRING)
                    .toList();
            assertEquals(
                    answer.firings().stream().map(Answer.Firing::n).sorted().toList(),
                    firings.stream().map(Step::firing).sorted().toList(),
                    name);
            List<Step> ofTask =
                    firings.stream().filter(s -> s.process().isEmpty()).toList();
            for (int i = 1; i < ofTask.size(); i++) {
                assertTrue(ofTask.get(i - 1).level() <= ofTask.get(i).level(), name);
            }
        });
    }

    @Test
    void no_step_reads_what_was_not_known_before_or_told_in_an_earlier_step() {
        ANSWERS.forEach((name, answer) -> {
            assertNothingReadTooSoon(name, answer, Replay.of(answer));
            processes(answer)
                    .forEach(p -> assertNothingReadTooSoon(
                            name + " " + p, answer, Replay.of(answer, p).orElseThrow()));
        });
    }

    private static void assertNothingReadTooSoon(String name, Answer answer, Replay replay) {
        Set<String> refs = refs(answer);
        Set<String> known = new HashSet<>();
        Set<String> told = new HashSet<>();
        for (Step step : replay.steps()) {
            for (Step.Read read : step.reads()) {
                boolean there = known.contains(read.ref()) || told.contains(read.ref());
                // A list of the task, looked through as a whole, is neither a fact nor a step; a conclusion that a
                // rule found missing is not there either.
                boolean absent = !refs.contains(read.ref())
                        && (!read.ref().contains("/") || read.ref().startsWith("conclusions/"));
                assertTrue(there || absent, name + ": " + step.id() + " reads " + read.ref());
            }
            known.addAll(step.learned());
            told.add(step.id());
        }
    }

    @Test
    void what_is_known_after_a_step_is_what_was_known_before_and_what_it_adds() {
        Answer answer = ANSWERS.get("bearing-rings.yaml");
        Replay replay = Replay.of(answer);
        for (int i = 1; i <= replay.size(); i++) {
            Set<String> after = new LinkedHashSet<>(replay.known(i - 1));
            after.addAll(replay.steps().get(i - 1).learned());
            assertEquals(replay.known(i), after);
        }
        assertEquals(Set.of(), replay.known(0));
    }

    @Test
    void ids_are_unique_and_stay_when_the_order_of_the_processes_and_the_numbers_change() {
        ANSWERS.forEach((name, answer) -> {
            List<String> ids = ids(Replay.of(answer));
            assertEquals(ids.size(), new HashSet<>(ids).size(), name);
        });
        // Other weights give other points and another order; one firing less gives all later ones another number.
        Answer answer = ANSWERS.get("bearing-rings.yaml");
        Answer weighed = Starter.swept()
                .assess(
                        Starter.demoTasks().get("bearing-rings.yaml"),
                        new org.washwright.assessment.Wishes(
                                Map.of(
                                        "technology", 1.0,
                                        "quality", 0.0,
                                        "health-and-safety", 0.0,
                                        "environment", 0.0,
                                        "cost", 9.0),
                                Map.of(),
                                Map.of(),
                                Starter.WISHES.asOf(),
                                0))
                .answer();
        assertFalse(
                answer.candidates().get(0).low() == weighed.candidates().get(0).low());
        assertEquals(new HashSet<>(ids(Replay.of(answer))), new HashSet<>(ids(Replay.of(weighed))));
        Set<String> ofRules = answer.firings().stream()
                .map(f -> "rule/" + f.rule() + "/" + String.join("+", f.matched())
                        + (f.line().isEmpty() ? "" : "@" + f.line())
                        + (f.certain() ? "" : "?"))
                .collect(Collectors.toSet());
        assertTrue(new HashSet<>(ids(Replay.of(answer))).containsAll(ofRules));
    }

    @Test
    void the_story_of_one_process_holds_every_firing_that_speaks_of_it_and_is_far_shorter_than_the_whole() {
        ANSWERS.forEach((name, answer) -> {
            int whole = Replay.of(answer).size();
            for (String process : processes(answer)) {
                Replay story = Replay.of(answer, process).orElseThrow();
                Set<Integer> told = story.steps().stream().map(Step::firing).collect(Collectors.toSet());
                Set<Integer> speaking = answer.firings().stream()
                        .filter(f -> f.line().equals(process)
                                || f.findings().stream()
                                        .anyMatch(x -> x.targets().contains(process)))
                        .map(Answer.Firing::n)
                        .collect(Collectors.toSet());
                assertTrue(told.containsAll(speaking), name + " " + process);
                assertTrue(story.size() * 4 < whole, name + " " + process + ": " + story.size() + " of " + whole);
                assertTrue(refs(answer).containsAll(story.known(story.size())), name);
            }
        });
    }

    @Test
    void a_story_rests_on_nothing_that_it_does_not_tell() {
        ANSWERS.forEach((name, answer) -> {
            Map<Integer, Answer.Firing> firings =
                    answer.firings().stream().collect(Collectors.toMap(Answer.Firing::n, f -> f));
            for (String process : processes(answer)) {
                Replay story = Replay.of(answer, process).orElseThrow();
                Set<String> known = story.known(story.size());
                Set<Integer> told = story.steps().stream().map(Step::firing).collect(Collectors.toSet());
                for (int n : told) {
                    if (n > 0) {
                        firings.get(n).matched().forEach(ref -> assertTrue(known.contains(ref), name + " " + ref));
                    }
                }
                for (Answer.Fact fact : answer.facts()) {
                    if (known.contains(fact.id())) {
                        assertTrue(told.containsAll(fact.firings()), name + " " + process + " " + fact.id());
                    }
                    fact.attributes().stream()
                            .filter(a -> known.contains(a.ref()))
                            .flatMap(a -> a.origin().inputs().stream())
                            .filter(refs(answer)::contains)
                            .forEach(i -> assertTrue(known.contains(i), name + " " + process + " " + i));
                }
            }
        });
    }

    @Test
    void chapters_and_their_parts_cover_every_step_once() {
        Answer answer = ANSWERS.get("steel-clips.yaml");
        Replay replay = Replay.of(answer);
        List<Integer> covered = new ArrayList<>();
        replay.chapters().forEach(c -> {
            assertEquals(
                    c.count(), c.parts().stream().mapToInt(Chapter.Part::count).sum());
            c.parts().forEach(p -> {
                for (int i = 0; i < p.count(); i++) {
                    covered.add(p.from() + i);
                }
            });
        });
        assertEquals(
                java.util.stream.IntStream.rangeClosed(1, replay.size()).boxed().toList(), covered);
    }

    @Test
    void the_next_conclusion_is_the_next_firing_that_other_rules_can_build_on() {
        Answer answer = ANSWERS.get("bearing-rings.yaml");
        Replay replay = Replay.of(answer);
        Set<Integer> found = new HashSet<>();
        int at = 0;
        while (replay.nextConclusion(at).isPresent()) {
            at = replay.nextConclusion(at).getAsInt();
            found.add(replay.steps().get(at - 1).firing());
        }
        Set<Integer> concluding = answer.firings().stream()
                .filter(f -> f.findings().stream().anyMatch(x -> x.verb().equals("conclude")))
                .map(Answer.Firing::n)
                .collect(Collectors.toSet());
        assertFalse(concluding.isEmpty());
        assertEquals(concluding, found);
    }

    @Test
    void a_process_that_the_answer_does_not_judge_has_no_story() {
        assertTrue(Replay.of(ANSWERS.get("bogie.yaml"), "no-such-process").isEmpty());
    }

    private static List<String> ids(Replay replay) {
        return replay.steps().stream().map(Step::id).toList();
    }

    private static Set<String> refs(Answer answer) {
        Set<String> refs = new LinkedHashSet<>();
        answer.facts().forEach(f -> {
            refs.add(f.id());
            f.attributes().forEach(a -> refs.add(a.ref()));
        });
        return refs;
    }

    private static List<String> processes(Answer answer) {
        List<String> out = new ArrayList<>();
        answer.candidates().forEach(c -> out.add(c.process()));
        answer.ruledOut().forEach(r -> out.add(r.process()));
        return out;
    }
}

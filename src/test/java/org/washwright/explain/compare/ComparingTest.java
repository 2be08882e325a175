package org.washwright.explain.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.assessment.Answer;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.document.Place;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.ProcessChange;
import org.washwright.explain.compare.Comparison.Said;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

/** No number here is expected from outside: what is held against each other are two answers and their comparison. */
class ComparingTest {

    private static final Map<String, FrozenAnswer> ANSWERS = new HashMap<>();

    static Stream<String> demoTasks() {
        return Starter.demoTasks().keySet().stream();
    }

    /** Every demo task with the next one, and with what each of some changes makes of it. */
    static Stream<String> pairs() {
        List<String> names = List.copyOf(Starter.demoTasks().keySet());
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            pairs.add(names.get(i) + " | " + names.get((i + 1) % names.size()));
            pairs.add(names.get(i) + " | " + names.get(i) + " with /following/operation=painting");
            pairs.add(names.get(i) + " | " + names.get(i) + " with /soils=unknown");
        }
        return pairs.stream();
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void an_answer_does_not_differ_from_itself(String task) {
        FrozenAnswer answer = answer(task);
        Comparison same = Comparing.of(answer, answer);
        assertTrue(same.same(), same.sentence());
        assertTrue(same.rules().isEmpty(), "nothing differs, so no rule made a difference");
        assertEquals("Nothing differs: both ask the same and answer the same.", same.sentence());
        assertEquals(findings(answer.answer()).size(), same.held());
    }

    @Test
    void an_answer_that_was_written_and_read_does_not_differ_from_the_one_in_memory() throws Exception {
        FrozenAnswer answer = answer("injector-bodies.yaml");
        assertTrue(Comparing.of(FrozenAnswer.read(answer.bytes()), answer).same());
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void findings_gained_and_lost_account_for_every_finding_of_both_answers(String pair) {
        FrozenAnswer before = answer(pair.split(" \\| ")[0]);
        FrozenAnswer after = answer(pair.split(" \\| ")[1]);
        Comparison c = Comparing.of(before, after);
        // Counted here from the answers themselves, by an identity written out a second time.
        Map<String, Integer> counted = count(before.answer());
        c.lost().forEach(s -> counted.merge(identity(s), -1, Integer::sum));
        c.gained().forEach(s -> counted.merge(identity(s), 1, Integer::sum));
        counted.values().removeIf(n -> n == 0);
        assertEquals(count(after.answer()), counted);
        assertEquals(
                findings(before.answer()).size(),
                c.held() + c.reworded().size() + c.lost().size());
        assertEquals(
                findings(after.answer()).size(),
                c.held() + c.reworded().size() + c.gained().size());
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void the_other_way_round_gained_and_lost_change_sides(String pair) {
        FrozenAnswer before = answer(pair.split(" \\| ")[0]);
        FrozenAnswer after = answer(pair.split(" \\| ")[1]);
        Comparison there = Comparing.of(before, after);
        Comparison back = Comparing.of(after, before);
        assertEquals(Set.copyOf(there.gained()), Set.copyOf(back.lost()));
        assertEquals(Set.copyOf(there.lost()), Set.copyOf(back.gained()));
        Set<Comparison.Reworded> turned = new HashSet<>();
        there.reworded().forEach(r -> turned.add(new Comparison.Reworded(r.after(), r.before())));
        assertEquals(turned, Set.copyOf(back.reworded()));
        assertEquals(standings(there, false), standings(back, true));
        assertEquals(sentences(there.cautions(), true), sentences(back.cautions(), false));
        assertEquals(sentences(there.questions(), true), sentences(back.questions(), false));
        assertEquals(sentences(there.verifications(), true), sentences(back.verifications(), false));
        assertEquals(there.asked().size(), back.asked().size());
        for (ProcessChange p : there.processes()) {
            ProcessChange q = process(back, p.process());
            assertEquals(p.stages().size(), q.stages().size(), p.name());
            assertEquals(p.figures().size(), q.figures().size(), p.name());
            Set<String> windows = new HashSet<>();
            p.windows().forEach(w -> windows.add(w.stage() + w.parameter() + w.after() + "/" + w.before()));
            Set<String> returned = new HashSet<>();
            q.windows().forEach(w -> returned.add(w.stage() + w.parameter() + w.before() + "/" + w.after()));
            assertEquals(windows, returned, p.name());
        }
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void every_difference_names_what_made_it_and_every_rule_is_cited(String pair) {
        Comparison c = Comparing.of(answer(pair.split(" \\| ")[0]), answer(pair.split(" \\| ")[1]));
        Set<String> cited = new HashSet<>();
        c.rules().forEach(r -> {
            cited.add(r.id());
            assertFalse(r.title().isBlank());
            assertTrue(
                    !r.sources().isEmpty() || r.basis().equals("common practice"), () -> r.id() + " rests on nothing");
        });
        List<List<Cause>> all = new ArrayList<>();
        for (ProcessChange p : c.processes()) {
            if (!p.before().equals(p.after())) {
                all.add(p.causes());
            }
            p.areas().forEach(a -> {
                all.add(a.causes());
                a.criteria().forEach(k -> k.points().forEach(x -> all.add(List.of(x.cause()))));
            });
            p.stages().forEach(x -> all.add(x.causes()));
            p.windows().forEach(x -> all.add(x.causes()));
            p.figures().forEach(x -> all.add(x.causes()));
            Stream.of(p.conditions(), p.reasons(), p.cautions()).forEach(l -> l.forEach(x -> all.add(x.causes())));
        }
        Stream.of(c.cautions(), c.doubts(), c.questions(), c.verifications())
                .forEach(l -> l.forEach(x -> all.add(x.causes())));
        assertEquals(c.same(), all.isEmpty(), "a difference is more than findings alone");
        for (List<Cause> causes : all) {
            assertFalse(causes.isEmpty());
            for (Cause cause : causes) {
                assertFalse(cause.name().isBlank(), cause.toString());
                assertTrue(!cause.kind().equals("rule") || cited.contains(cause.id()), cause.toString());
            }
        }
        c.gained().forEach(s -> assertTrue(cited.contains(s.rule())));
        c.lost().forEach(s -> assertTrue(cited.contains(s.rule())));
    }

    @Test
    void the_sentence_says_what_was_asked_otherwise_who_leads_and_how_many_fall_out() {
        FrozenAnswer before = answer("steel-clips.yaml");
        FrozenAnswer after = answer("steel-clips.yaml with /following/operation=painting");
        Comparison c = Comparing.of(before, after);
        assertTrue(c.sentence().startsWith("With "), c.sentence());
        assertEquals(1, c.asked().size());
        assertEquals("/following/operation", c.asked().get(0).place());
        assertTrue(c.sentence().contains(c.asked().get(0).after()), c.sentence());
        long falls = before.answer().candidates().stream()
                .filter(x -> after.answer().candidates().stream()
                        .noneMatch(y -> y.process().equals(x.process())))
                .count();
        assertEquals(falls, c.processes().stream().filter(ProcessChange::falls).count());
        String leader = after.answer().candidates().get(0).name();
        assertTrue(c.sentence().contains(leader), c.sentence());
    }

    @Test
    void other_weights_are_named_as_what_moved_the_points() {
        Wishes heavy = new Wishes(Map.of("cost", 3.0), Map.of(), Starter.WISHES.asOf(), 0);
        FrozenAnswer before = answer("bearing-rings.yaml");
        FrozenAnswer after = Starter.swept().assess(Starter.demoTasks().get("bearing-rings.yaml"), heavy);
        Comparison c = Comparing.of(before, after);
        assertEquals(1, c.asked().size(), c.asked().toString());
        assertEquals("wish", c.asked().get(0).kind());
        assertTrue(c.gained().isEmpty() && c.lost().isEmpty(), "weights fire no rule");
        assertTrue(
                c.processes().stream()
                        .allMatch(p -> p.causes().stream()
                                .allMatch(
                                        x -> x.kind().equals("wish") || x.kind().equals("process"))),
                "only the weight, or others that came between");
    }

    @Test
    void it_is_written_as_the_same_bytes_every_time_and_holds_no_number_of_points_among_findings() {
        FrozenAnswer before = answer("bearing-rings.yaml");
        FrozenAnswer after = answer("bearing-rings.yaml with /following/operation=painting");
        byte[] once = Hashes.canonical(Comparing.of(before, after));
        assertEquals(Hashes.sha256(once), Hashes.sha256(Hashes.canonical(Comparing.of(before, after))));
        Comparing.of(before, after).gained().forEach(s -> assertFalse(s.detail().endsWith(" points"), s.detail()));
    }

    private static FrozenAnswer answer(String name) {
        return ANSWERS.computeIfAbsent(name, n -> {
            String[] parts = n.split(" with ");
            CleaningTask task = Starter.demoTasks().get(parts[0]);
            if (parts.length > 1) {
                Diagnostics diagnostics = new Diagnostics();
                Change change =
                        Change.parse(parts[1], Place.ofFile("-"), diagnostics).orElseThrow();
                task = TaskChanges.apply(task, List.of(change), Starter.edition(), diagnostics)
                        .orElseThrow(() -> new AssertionError(diagnostics.all().toString()));
            }
            return Starter.swept().assess(task, Starter.WISHES);
        });
    }

    private static List<String> findings(Answer answer) {
        List<String> out = new ArrayList<>();
        for (Answer.Firing f : answer.firings()) {
            String own = f.rule() + "|" + f.certain() + "|" + f.line() + "|" + f.matched() + "|";
            f.findings().forEach(x -> out.add(own + x.verb() + "|" + x.targets()));
            if (f.findings().isEmpty()) {
                out.add(own + "|[]");
            }
        }
        return out;
    }

    private static Map<String, Integer> count(Answer answer) {
        Map<String, Integer> out = new TreeMap<>();
        findings(answer).forEach(s -> out.merge(s, 1, Integer::sum));
        return out;
    }

    private static String identity(Said s) {
        return s.rule() + "|" + s.certain() + "|" + s.line() + "|" + s.matched() + "|" + s.verb() + "|" + s.targets();
    }

    private static Map<String, List<Object>> standings(Comparison c, boolean turned) {
        Map<String, List<Object>> out = new TreeMap<>();
        c.processes()
                .forEach(p ->
                        out.put(p.process(), turned ? List.of(p.after(), p.before()) : List.of(p.before(), p.after())));
        return out;
    }

    private static Set<String> sentences(List<Comparison.SentenceChange> changes, boolean gained) {
        Set<String> out = new HashSet<>();
        changes.stream().filter(s -> s.gained() == gained).forEach(s -> out.add(s.text()));
        return out;
    }

    private static ProcessChange process(Comparison c, String id) {
        return c.processes().stream()
                .filter(p -> p.process().equals(id))
                .findFirst()
                .orElseThrow();
    }
}

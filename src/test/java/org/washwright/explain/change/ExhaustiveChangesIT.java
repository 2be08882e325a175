package org.washwright.explain.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Places;
import org.washwright.generate.RuleWriter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/**
 * On small spaces every set of up to three places with every combination of values is answered by the plain interpreter. The
 * search must find exactly the smallest of the sets that reach the goal: none smaller is missed, none is made up.
 */
@Tag("slow")
class ExhaustiveChangesIT {

    private static final int RULES = 40;
    private static final int TASKS = 6;
    private static final int PLACES = 6;
    private static final int VALUES = 3;
    private static final int MOST = 3;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_smaller_set_is_missed_and_none_is_made_up(long seed) {
        Random random = new Random(seed);
        Edition edition = SmallEdition.with(RuleWriter.write(random, SmallEdition.with(""), RULES));
        Assessor plain = Assessor.of(edition, ReferenceInterpreter.factory());
        ChangeFinder finder = new ChangeFinder(Assessor.of(edition, SweepInference.factory()));
        TaskMaker maker = new TaskMaker(random, edition);
        int sets = 0;
        int several = 0;
        int searched = 0;
        for (int t = 0; t < TASKS; t++) {
            CleaningTask task = maker.task();
            Optional<Answer> now = answer(plain, task);
            for (Goal goal : now.isEmpty() ? List.<Goal>of() : goals(now.get())) {
                List<Places.Choice> choices = some(finder.choices(task, goal, Set.of()), random);
                Changes found = finder.find(
                        task, Starter.WISHES, goal, new ChangeFinder.Scope(Set.of(), MOST, 20_000), choices, n -> {});
                if (found.reached()) {
                    continue;
                }
                assertTrue(found.search().complete(), found.search().toString());
                Set<Set<String>> expected = new Brute(plain, task, found, choices).smallest();
                Set<Set<String>> proposed = new java.util.LinkedHashSet<>();
                found.proposals().forEach(p -> {
                    Set<String> pointers = new TreeSet<>();
                    p.changes().forEach(c -> pointers.add(c.way() + c.pointer()));
                    proposed.add(pointers);
                });
                assertEquals(expected, proposed, () -> "seed " + seed + " " + goal + " on " + choices);
                searched++;
                sets += expected.size();
                several += (int) expected.stream().filter(s -> s.size() > 1).count();
            }
        }
        System.out.println(
                "seed " + seed + ": " + searched + " searches, " + sets + " sets, " + several + " of several");
        // There has to be something to find: own earlier output, a part of it.
        assertTrue(searched > 5, searched + " searches");
    }

    private static List<Goal> goals(Answer now) {
        List<Goal> out = new ArrayList<>(List.of(new Goal(Goal.Kind.DISPLACE_FIRST, "")));
        for (String process : List.of("water-a", "oil-b")) {
            for (Goal.Kind kind : List.of(Goal.Kind.BRING_IN, Goal.Kind.LET_STAND, Goal.Kind.PUT_FIRST)) {
                out.add(new Goal(kind, process));
            }
        }
        return now.candidates().isEmpty() ? out.subList(1, out.size()) : out;
    }

    /** Few places with few values each. */
    private static List<Places.Choice> some(List<Places.Choice> all, Random random) {
        List<Places.Choice> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, random);
        return shuffled.stream()
                .limit(PLACES)
                .map(c -> new Places.Choice(
                        c.place(), c.moves().stream().limit(VALUES).toList()))
                .toList();
    }

    private static Optional<Answer> answer(Assessor assessor, CleaningTask task) {
        try {
            return Optional.of(assessor.assess(task, Starter.WISHES).answer());
        } catch (RefusedTask e) {
            return Optional.empty();
        }
    }

    /** Tries everything. */
    private record Brute(Assessor assessor, CleaningTask task, Changes goal, List<Places.Choice> choices) {

        Set<Set<String>> smallest() {
            Set<Set<String>> out = new java.util.LinkedHashSet<>();
            for (int size = 1; size <= MOST; size++) {
                Set<Set<String>> now = new java.util.LinkedHashSet<>();
                sets(size, 0, new ArrayList<>(), out, now);
                out.addAll(now);
            }
            return out;
        }

        private void sets(
                int size, int from, List<Places.Choice> chosen, Set<Set<String>> smaller, Set<Set<String>> found) {
            if (chosen.size() == size) {
                Set<String> pointers = new TreeSet<>();
                chosen.forEach(c -> pointers.add(way(c) + c.place().pointer()));
                if (smaller.stream().noneMatch(pointers::containsAll) && reaches(chosen, 0, new ArrayList<>())) {
                    found.add(pointers);
                }
                return;
            }
            for (int i = from; i < choices.size(); i++) {
                chosen.add(choices.get(i));
                sets(size, i + 1, chosen, smaller, found);
                chosen.remove(chosen.size() - 1);
            }
        }

        private boolean reaches(List<Places.Choice> chosen, int at, List<Move> moves) {
            if (at == chosen.size()) {
                CleaningTask changed = Moves.apply(task, moves);
                return Moves.leavesWork(task, changed)
                        && answer(assessor, changed)
                                .filter(a -> Promises.isReached(goal, a))
                                .isPresent();
            }
            for (Move m : chosen.get(at).moves()) {
                moves.add(m);
                boolean here = reaches(chosen, at + 1, moves);
                moves.remove(moves.size() - 1);
                if (here) {
                    return true;
                }
            }
            return false;
        }

        private static String way(Places.Choice c) {
            return switch (c.place().getClass().getSimpleName()) {
                case "Said" -> "set";
                case "More" -> "add";
                case "Gone" -> "remove";
                default -> "close";
            };
        }
    }
}

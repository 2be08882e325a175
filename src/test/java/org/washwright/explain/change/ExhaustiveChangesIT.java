package org.washwright.explain.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Standing;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Places;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.line.ProcessLine;
import org.washwright.line.ProcessLine.Status;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * On small spaces every set of up to three places with every combination of values is answered by the plain interpreter. The
 * search must find exactly the smallest of the sets that reach the goal: none smaller is missed, none is made up.
 */
@Tag("slow")
class ExhaustiveChangesIT {

    private static final int RULES = 24;
    private static final int TASKS = 14;
    private static final int PLACES = 7;
    private static final int VALUES = 3;
    private static final int MOST = 3;

    /** What rules ask for: few things, so that several rules stand in the way of one process and need several changes. */
    private static final List<String> CONDITIONS = List.of(
            "Lot(charging == \"charging-a\")",
            "Lot(place != \"place-b\")",
            "Demand(waterBreakFree == true)",
            "Demand(residue < \"5 g/m2\")",
            "Following(operation.wet == true)",
            "Site(steam == false)",
            "Soil(silicone == true)",
            "Soil(kind.oily == true)",
            "not Soil(state == \"soil-state-a\")",
            "not PermittedSolvent(solventClass == \"solvent-class-b\")",
            "Preceding(delay >= \"2 s\")");

    private static final List<String> PROCESSES = List.of("water-a", "water-b", "oil-a", "oil-b");

    /** Rules that rule processes out or move their points, some through a conclusion. */
    private static String rules(Random random) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < RULES; i++) {
            String process = PROCESSES.get(random.nextInt(PROCESSES.size()));
            String when = condition(random) + "\n" + (random.nextInt(3) == 0 ? condition(random) + "\n" : "");
            String then = random.nextInt(3) > 0
                    ? "ruleOut($p, \"main\", \"Out.\");"
                    : (random.nextBoolean() ? "support" : "oppose") + "($p, \"works\", 2, \"So.\");";
            out.append("rule \"r" + i + "\" @id(\"R-" + (100 + i) + "\") @basis(\"common practice\")\nwhen " + when
                    + "$p : Process(id == \"" + process + "\")\nthen " + then + "\nend\n");
        }
        return out.toString();
    }

    private static String condition(Random random) {
        return CONDITIONS.get(random.nextInt(CONDITIONS.size()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_smaller_set_is_missed_and_none_is_made_up(long seed) {
        Random random = new Random(seed);
        Edition edition = SmallEdition.with(rules(random));
        Assessor plain = Assessor.of(edition, ReferenceInterpreter.factory());
        ChangeFinder finder = new ChangeFinder(Assessor.of(edition, SweepInference.factory()));
        int sets = 0;
        int several = 0;
        int searched = 0;
        for (int t = 0; t < TASKS; t++) {
            CleaningTask task = task(random);
            Optional<Standing> now = standing(plain, task);
            for (Goal goal : now.isEmpty() ? List.<Goal>of() : goals(now.get(), random)) {
                List<Places.Choice> choices = some(finder.choices(task, READ, Set.of()), random);
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
        assertTrue(sets > 5, sets + " sets");
        assertTrue(several > 0, several + " sets of several");
    }

    /** What rules read may change, whatever the goal. */
    private static final Goal READ = new Goal(Goal.Kind.LET_STAND, "water-a");

    private static List<Goal> goals(Standing now, Random random) {
        List<Goal> out = new ArrayList<>();
        if (!now.ranked().isEmpty()) {
            out.add(new Goal(Goal.Kind.DISPLACE_FIRST, ""));
        }
        for (Goal.Kind kind : List.of(Goal.Kind.BRING_IN, Goal.Kind.LET_STAND, Goal.Kind.PUT_FIRST)) {
            out.add(new Goal(kind, PROCESSES.get(random.nextInt(PROCESSES.size()))));
        }
        return out;
    }

    /** A task of which nearly all that rules ask for is known. */
    private static CleaningTask task(Random random) {
        CleaningTask task = new CleaningTask("made", "", Map.of(), Map.of());
        for (Group list : List.of(Group.SOILS, Group.PERMITTED_SOLVENTS, Group.PLANTS)) {
            task = task.with(list, new CleaningTask.Entries(List.of(), false));
        }
        task = with(task, Group.LOT, "charging", term(random, "charging"));
        task = with(task, Group.LOT, "place", term(random, "place"));
        task = with(task, Group.DEMAND, "waterBreakFree", Value.flag(random.nextBoolean()));
        task = with(task, Group.DEMAND, "residue", Value.number(random.nextBoolean() ? 0.002 : 0.008));
        task = with(task, Group.FOLLOWING, "operation", term(random, "operation"));
        task = with(task, Group.SITE, "steam", random.nextInt(4) == 0 ? Value.UNKNOWN : Value.flag(false));
        task = with(task, Group.SOILS, "kind", term(random, "soil"));
        task = with(task, Group.SOILS, "silicone", Value.flag(random.nextBoolean()));
        task = with(task, Group.SOILS, "state", term(random, "soil-state"));
        task = with(task, Group.PRECEDING, "delay", Value.number(random.nextInt(5)));
        return with(task, Group.PERMITTED_SOLVENTS, "solventClass", term(random, "solvent-class"));
    }

    private static CleaningTask with(CleaningTask task, Group group, String attribute, Value value) {
        return task.with(group, 0, attribute, value);
    }

    private static Value term(Random random, String kind) {
        return Value.term(kind + "-" + List.of("a", "b", "c").get(random.nextInt(3)));
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

    private static Optional<Standing> standing(Assessor assessor, CleaningTask task) {
        try {
            return Optional.of(assessor.standing(task, Starter.WISHES));
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
                        && standing(assessor, changed).filter(this::isReached).isPresent();
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

        private boolean isReached(Standing now) {
            String first = now.ranked().isEmpty() ? "" : now.ranked().get(0).process();
            Status status =
                    now.outcome().line(goal.process()).map(ProcessLine::status).orElse(Status.RULED_OUT);
            return switch (Goal.Kind.byWord(goal.goal()).orElseThrow()) {
                case BRING_IN -> status == Status.RECOMMENDED;
                case LET_STAND -> status != Status.RULED_OUT;
                case PUT_FIRST -> first.equals(goal.process());
                case DISPLACE_FIRST -> !first.equals(goal.process());
            };
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

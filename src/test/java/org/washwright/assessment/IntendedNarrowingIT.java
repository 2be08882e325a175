package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.IntendedVerdict.Verdict;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * The law of not knowing, for verdicts: saying more never turns a fit into its opposite or back, and a fit stays one as long
 * as no setting is named that nobody had given.
 */
@Tag("slow")
class IntendedNarrowingIT {

    private static final int TASKS = 60;
    private static final int TRIES = 8;
    private static final int STEPS = 5;

    /** Each process can fall out, and two windows can become narrower, all by what random tasks often leave open. */
    private static final String RULES = """
            rule "a" @id("R-1") @basis("common practice") when Soil(kind == "soil-a")
              then ruleOut("water-a", "main", "No."); end
            rule "b" @id("R-2") @basis("common practice") when Intended(temperature > "60 °C")
              then ruleOut("water-b", "main", "Too hot."); end
            rule "c" @id("R-3") @basis("common practice") when Material(porous == true)
              then ruleOut("oil", "main", "It stays in pores."); end
            rule "d" @id("R-4") @basis("common practice") when Site(waterDischarge == false)
              then ruleOut("water", "main", "No water."); end
            rule "e" @id("R-5") @basis("common practice") when Lot(place == "place-a")
              then limit("any", "main", "temperature", max("50 °C"), "Not hotter here."); end
            """;

    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73})
    void sayingMoreNeverTurnsAVerdictRound(long seed) {
        Random random = new Random(seed);
        Edition edition = SmallEdition.with(RULES);
        Assessor assessor = Assessor.of(edition, ReferenceInterpreter.factory());
        TaskMaker maker = new TaskMaker(random, edition);
        List<String> broken = new ArrayList<>();
        Map<Verdict, Integer> seen = new EnumMap<>(Verdict.class);
        int decided = 0;
        for (int t = 0; t < TASKS; t++) {
            CleaningTask task = maker.task().with(Group.INTENDED, 0, "process", Value.oneOf(some(random)));
            Optional<IntendedVerdict> before = judged(assessor, task);
            for (int i = 0; i < TRIES; i++) {
                // Several steps at once: what few attributes decide is seldom hit by one.
                CleaningTask said = task;
                for (int k = 0; k < STEPS; k++) {
                    said = maker.narrower(said).map(TaskMaker.Narrowed::task).orElse(said);
                }
                Optional<IntendedVerdict> after = judged(assessor, said);
                if (before.isPresent() && after.isPresent()) {
                    String was = before.get().verdict();
                    String is = after.get().verdict();
                    boolean named = !given(task).equals(given(said));
                    if (broken(was, is, named)) {
                        broken.add(was + " became " + is + " when more is said than " + task.lists());
                    }
                    decided += was.equals(is) ? 0 : 1;
                    seen.merge(verdict(is), 1, Integer::sum);
                }
                if (after.isPresent()) {
                    task = said;
                    before = after;
                }
            }
        }
        assertEquals(List.of(), broken);
        for (Verdict v : List.of(Verdict.FITS, Verdict.FITS_IF, Verdict.DOES_NOT_FIT)) {
            assertTrue(seen.getOrDefault(v, 0) > 5, seen::toString);
        }
        assertTrue(decided > 0, seen::toString);
    }

    private static List<String> some(Random random) {
        List<String> all = List.of("water-a", "water-b", "oil-a", "oil-b", "water", "oil");
        return List.of(all.get(random.nextInt(all.size())), all.get(random.nextInt(all.size()))).stream()
                .distinct()
                .toList();
    }

    private static boolean broken(String was, String is, boolean named) {
        return switch (verdict(was)) {
            case FITS -> !is.equals(was) && !(named && is.equals(Verdict.FITS_IF.word()));
            case DOES_NOT_FIT -> !is.equals(was);
            default -> false;
        };
    }

    private static Verdict verdict(String word) {
        return List.of(Verdict.values()).stream()
                .filter(v -> v.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    /** Names of the settings that were given. */
    private static List<String> given(CleaningTask task) {
        return Group.INTENDED.attributes().stream()
                .map(a -> a.name())
                .filter(a -> task.single(Group.INTENDED).value(a) instanceof Value.Number)
                .toList();
    }

    private static Optional<IntendedVerdict> judged(Assessor assessor, CleaningTask task) {
        try {
            return assessor.assess(task, Wishes.on("2026-11-25")).answer().intended();
        } catch (RefusedTask e) {
            return Optional.empty();
        }
    }
}

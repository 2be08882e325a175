package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.assessment.Assessor;
import org.washwright.generate.RuleWriter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** Compiled units: made once, shared, replaced when in doubt, and let go when nobody needs them. */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class UnitsIT {

    private static final int RULES = 100;
    private static final int CYCLES = 200;

    @TempDir
    static Path temp;

    private final String text = RuleWriter.write(new Random(5), SmallEdition.with(""), RULES);
    private final Edition edition = SmallEdition.with(text);
    private final CleaningTask task = Starter.task(
            edition,
            "title: t\nsoils: {open: no, list: [{kind: soil-a}, {kind: soil-b}]}\n"
                    + "features: {open: yes, list: [{kind: feature-a, depth: 5 mm, diameter: 1 mm}]}\n");

    @BeforeAll
    void compileOnce() {
        assessor(edition, units());
    }

    @Test
    void aSecondStartCompilesNothingAndAnswersAlike() {
        Units units = units();
        byte[] answer = answer(assessor(edition, units));
        assertEquals(0, units.compiled());
        assertArrayEquals(answer(Assessor.of(edition, org.washwright.engine.ReferenceInterpreter.factory())), answer);
    }

    @Test
    void aChangedRuleCompilesOneUnit() {
        Units units = units();
        Assessor before = assessor(edition, units);
        // Another term in the first condition of some rule.
        int at = text.indexOf("\"soil-a\"");
        Edition changed =
                SmallEdition.with(text.substring(0, at) + "\"soil-b\"" + text.substring(at + "\"soil-a\"".length()));
        Assessor after = assessor(changed, units);
        assertEquals(1, units.compiled());
        assertEquals(before.edition().rules().size(), after.edition().rules().size());
    }

    @Test
    void damagedAndForeignUnitsAreMadeAnew() throws IOException {
        Path other = temp.resolve("damaged");
        Units first = Units.in(other);
        assessor(edition, first);
        List<Path> files = new ArrayList<>();
        try (Stream<Path> all = Files.list(other)) {
            all.filter(f -> f.toString().endsWith(".unit")).sorted().forEach(files::add);
        }
        Files.write(files.get(0), new byte[] {1, 2, 3});
        Files.copy(files.get(1), files.get(2), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Units second = Units.in(other);
        assertArrayEquals(answer(assessor(edition, units())), answer(assessor(edition, second)));
        assertEquals(2, second.compiled());
    }

    @Test
    void editionsShareTheUnitsThatTheyHaveInCommon() {
        Units units = units();
        Assessor one = assessor(edition, units);
        int held = units.held();
        Assessor two = assessor(edition, units);
        assertEquals(held, units.held());
        assertArrayEquals(answer(one), answer(two));
    }

    @Test
    void manyThreadsMayAskForTheSameUnits() {
        Units units = Units.in(temp.resolve("threads"));
        byte[] expected = answer(assessor(edition, units()));
        IntStream.range(0, 4)
                .parallel()
                .mapToObj(i -> answer(assessor(edition, units)))
                .forEach(bytes -> assertArrayEquals(expected, bytes));
    }

    @Test
    void aFolderThatCannotBeKeptPrivateCostsNoAnswer() throws IOException {
        Units units = Units.in(Files.createFile(temp.resolve("no-folder")));
        Edition few = SmallEdition.with(RuleWriter.write(new Random(6), SmallEdition.with(""), 5));
        assertTrue(assessor(few, units).assess(task, Starter.WISHES).bytes().length > 0);
        assertTrue(units.compiled() > 0);
    }

    /** Loads an edition and lets it go again and again: what is left over would be a leak. */
    @Test
    void loadingAndDroppingEditionsLeavesNothingBehind() {
        Units units = units();
        long[] heap = new long[4];
        long[] classes = new long[4];
        for (int i = 0; i < CYCLES; i++) {
            answer(assessor(edition, units));
            if (i % 10 == 9) {
                int quarter = i * 4 / CYCLES;
                System.gc();
                heap[quarter] += usedHeap();
                classes[quarter] += ManagementFactory.getClassLoadingMXBean().getLoadedClassCount();
            }
        }
        System.out.println("heap by quarters " + java.util.Arrays.toString(heap) + ", classes "
                + java.util.Arrays.toString(classes));
        // The first quarter warms up; 5 % is what this project allows itself.
        assertTrue(heap[3] < 1.05 * heap[1], "heap grew from " + heap[1] + " to " + heap[3]);
        assertTrue(classes[3] < 1.05 * classes[1], "classes grew from " + classes[1] + " to " + classes[3]);
        assertEquals(0, units.compiled());
    }

    private static long usedHeap() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private static Units units() {
        return Units.in(temp.resolve("units"));
    }

    private static Assessor assessor(Edition edition, Units units) {
        return Assessor.of(edition, DroolsInference.factory(units));
    }

    private byte[] answer(Assessor assessor) {
        return assessor.assess(task, Starter.WISHES).bytes();
    }
}

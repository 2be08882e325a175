package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often a candidate is first, against what plane geometry says. */
class FirstRankShareTest {

    private static final int DRAWS = 40_000;

    /**
     * Two areas: weights w and 1 - w with w even from 0 to 1. The first candidate wins from where the lines cross, so
     * its share is a length; by hand. The tolerance is four standard deviations of 40 000 draws.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 0, 1, 0.5",
        "1, 0, 0, 3, 0.25",
        "0.9, 0.2, 0.5, 0.4, 0.666667",
        "0.9, 0.1, 0.8, 0.9, 0.111111",
        "0.6, 0.6, 0.5, 0.7, 0.5",
    })
    void twoAreasShareTheLine(double a1, double a2, double b1, double b2, double share) {
        double[] found = FirstRankShare.of(new double[][] {{a1, a2}, {b1, b2}}, 5, DRAWS);
        double tolerance = 4 * StrictMath.sqrt(share * (1 - share) / DRAWS);
        assertEquals(share, found[0], tolerance);
        assertEquals(1 - share, found[1], tolerance);
    }

    /** Each of n candidates best in one of n areas alone: 1/n each by symmetry. */
    @ParameterizedTest
    @CsvSource({"2", "3", "4", "6"})
    void equalCandidatesShareEqually(int n) {
        double[][] scores = new double[n][n];
        for (int i = 0; i < n; i++) {
            scores[i][i] = 1;
        }
        for (double share : FirstRankShare.of(scores, 6, DRAWS)) {
            assertEquals(1.0 / n, share, 4 * StrictMath.sqrt(1.0 / n / DRAWS));
        }
    }

    /**
     * Weights of a simplex of three areas exceed one half with the chance 1/4 each (area of a corner; Devroye 1986,
     * from memory).
     */
    @Test
    void weightingsAreEvenlySpread() {
        // The second candidate is worth half of all weight, whatever the weights are.
        double[] found = FirstRankShare.of(new double[][] {{1, 0, 0}, {0.5, 0.5, 0.5}}, 7, DRAWS);
        assertEquals(0.25, found[0], 4 * StrictMath.sqrt(0.25 * 0.75 / DRAWS));
        // And of four areas with the chance 1/8.
        found = FirstRankShare.of(new double[][] {{1, 0, 0, 0}, {0.5, 0.5, 0.5, 0.5}}, 7, DRAWS);
        assertEquals(0.125, found[0], 4 * StrictMath.sqrt(0.125 * 0.875 / DRAWS));
    }

    @Test
    void sharesAddUpToOneAndDominatedCandidatesHaveNone() {
        Random random = new Random(109);
        for (int i = 0; i < 50; i++) {
            double[][] scores = scores(random);
            double[] shares = FirstRankShare.of(scores, i, 500);
            assertEquals(1, Arrays.stream(shares).sum(), 1e-12);
            double[][] worse = Arrays.copyOf(scores, scores.length + 1);
            worse[scores.length] = Arrays.stream(scores[0]).map(s -> s - 1e-3).toArray();
            double[] again = FirstRankShare.of(worse, i, 500);
            assertEquals(0, again[scores.length]);
            assertArrayEquals(shares, Arrays.copyOf(again, scores.length));
        }
    }

    /** Whoever leaves gives up the own draws to the rest; no share of a candidate that stays becomes smaller. */
    @Test
    void leavingOutACandidateOnlyLetsTheRestGrow() {
        Random random = new Random(110);
        for (int i = 0; i < 50; i++) {
            double[][] scores = scores(random);
            double[] before = FirstRankShare.of(scores, 9, 500);
            int out = scores.length - 1;
            double[] after = FirstRankShare.of(Arrays.copyOf(scores, out), 9, 500);
            double growth = 0;
            for (int k = 0; k < out; k++) {
                assertTrue(after[k] >= before[k] - 1e-12);
                growth += after[k] - before[k];
            }
            assertEquals(before[out], growth, 1e-12);
        }
    }

    @Test
    void tiesAreSharedAndTheSeedSaysWhatIsDrawn() {
        double[][] twins = {{0.3, 0.8}, {0.3, 0.8}, {0.3, 0.8}, {0.1, 0.1}};
        assertArrayEquals(new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0, 0}, FirstRankShare.of(twins, 1, 90), 1e-12);
        double[][] scores = {{0.3, 0.8, 0.1}, {0.9, 0.1, 0.2}, {0.2, 0.3, 0.6}};
        assertArrayEquals(FirstRankShare.of(scores, 4, 300), FirstRankShare.of(scores, 4, 300));
        assertTrue(!Arrays.equals(FirstRankShare.of(scores, 4, 300), FirstRankShare.of(scores, 5, 300)));
    }

    /** An area in which all score the same changes no rank, and neither does a scale common to all areas. */
    @Test
    void scalesCommonToAllChangeNothing() {
        double[][] scores = {{0.25, 0.75}, {0.5, 0.125}};
        double[][] scaled = {{0.5, 1.5}, {1, 0.25}};
        assertArrayEquals(FirstRankShare.of(scores, 2, 2000), FirstRankShare.of(scaled, 2, 2000));
    }

    @Test
    void scoresThatAreNoneAreRefused() {
        assertThrows(RefusedInput.class, () -> FirstRankShare.of(new double[0][0], 1, 10));
        assertThrows(RefusedInput.class, () -> FirstRankShare.of(new double[2][0], 1, 10));
        assertThrows(RefusedInput.class, () -> FirstRankShare.of(new double[][] {{1, 2}, {1}}, 1, 10));
        assertThrows(RefusedInput.class, () -> FirstRankShare.of(new double[][] {{1}}, 1, 0));
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertEquals(
                    "score is " + bad + "; give a number",
                    assertThrows(RefusedInput.class, () -> FirstRankShare.of(new double[][] {{1, bad}}, 1, 10))
                            .getMessage());
        }
    }

    private static double[][] scores(Random random) {
        int areas = 2 + random.nextInt(4);
        double[][] scores = new double[2 + random.nextInt(5)][];
        for (int i = 0; i < scores.length; i++) {
            scores[i] = random.doubles(areas).toArray();
        }
        return scores;
    }
}

package org.washwright.science;

import java.util.SplittableRandom;

/**
 * How often each candidate comes first when nobody knows the weights: the share of all weightings, each as likely as
 * any other, in which its weighted sum is the highest (the rank acceptability for rank one of Lahdelma, Hokkanen and
 * Salminen, European Journal of Operational Research 106 (1998) 137, from memory).
 *
 * <p>Weightings are drawn evenly from the simplex by exponential spacings (Devroye, Non-Uniform Random Variate
 * Generation, 1986, chapter V, theorem 2.2, from memory); dividing them by their sum changes no rank and is left out.
 * The same seed draws the same weightings, whatever the candidates. Candidates that tie share the draw. The error of a
 * share s after N draws is about {@code sqrt(s (1 - s) / N)}.
 */
public final class FirstRankShare {

    private static final int MOST_DRAWS = 10_000_000;

    private FirstRankShare() {}

    /**
     * Share of the weightings in which each candidate is first; in the order of the candidates.
     *
     * @param scores of each candidate in each area, higher being better, in one scale for all areas
     * @param seed of the draws
     * @param draws number of weightings
     * @throws RefusedInput for no candidates, no areas, rows of different lengths, a score that is no number or fewer
     *     than one draw
     */
    public static double[] of(double[][] scores, long seed, int draws) {
        check(scores, draws);
        double[] shares = new double[scores.length];
        double[] sums = new double[scores.length];
        double[] weights = new double[scores[0].length];
        SplittableRandom random = new SplittableRandom(seed);
        for (int draw = 0; draw < draws; draw++) {
            for (int area = 0; area < weights.length; area++) {
                weights[area] = -StrictMath.log1p(-random.nextDouble());
            }
            share(scores, weights, sums, shares);
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= draws;
        }
        return shares;
    }

    private static void share(double[][] scores, double[] weights, double[] sums, double[] shares) {
        double best = Double.NEGATIVE_INFINITY;
        int winners = 0;
        for (int i = 0; i < scores.length; i++) {
            sums[i] = 0;
            for (int area = 0; area < weights.length; area++) {
                sums[i] += weights[area] * scores[i][area];
            }
            if (sums[i] > best) {
                best = sums[i];
                winners = 1;
            } else if (sums[i] == best) {
                winners++;
            }
        }
        for (int i = 0; i < scores.length; i++) {
            if (sums[i] == best) {
                shares[i] += 1.0 / winners;
            }
        }
    }

    private static void check(double[][] scores, int draws) {
        Need.between(draws, 1, MOST_DRAWS, "number of draws", "");
        Need.positive(scores.length, "number of candidates", "");
        int areas = scores[0].length;
        Need.positive(areas, "number of areas", "");
        for (double[] row : scores) {
            Need.between(row.length, areas, areas, "number of scores of a candidate", "");
            for (double score : row) {
                Need.finite(score, "score", "");
            }
        }
    }
}

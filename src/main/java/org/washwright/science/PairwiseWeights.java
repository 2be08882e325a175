package org.washwright.science;

import java.util.Arrays;
import java.util.List;

/**
 * Weights from comparisons in pairs (Saaty, The Analytic Hierarchy Process, 1980, and Int. J. Services Sciences 1
 * (2008) 83, from memory): the principal right eigenvector of the matrix, scaled to the sum 1, by power iteration;
 * {@code CI = (lambda - n) / (n - 1)}, {@code CR = CI / RI}.
 *
 * <p>Row i, column j says how many times i matters as much as j. RI is the mean CI of random matrices: 0.58, 0.90,
 * 1.12, 1.24, 1.32, 1.41, 1.45 for n = 3 to 9; two are always consistent. For 1 to 9 things. Above CR = 0.10 the
 * comparisons contradict each other and should be made again: {@link #acceptable}.
 *
 * @param weights in the order of the rows; their sum is 1
 * @param lambda principal eigenvalue
 * @param consistencyIndex CI
 * @param consistencyRatio CR
 */
public record PairwiseWeights(List<Double> weights, double lambda, double consistencyIndex, double consistencyRatio) {

    private static final double[] RANDOM_INDEX = {0, 0, 0, 0.58, 0.90, 1.12, 1.24, 1.32, 1.41, 1.45};
    private static final double ACCEPTED = 0.10;
    private static final double RECIPROCAL = 1e-6;
    private static final double SETTLED = 1e-15;
    private static final int MOST_STEPS = 10_000;

    /** Keeps a copy. */
    public PairwiseWeights {
        weights = List.copyOf(weights);
    }

    /**
     * Weights of a matrix of comparisons.
     *
     * @throws RefusedInput for a matrix that is not square, has no or more than nine rows, or whose comparisons are not
     *     above zero or not reciprocal
     */
    public static PairwiseWeights of(double[][] matrix) {
        check(matrix);
        int n = matrix.length;
        double[] weights = new double[n];
        Arrays.fill(weights, 1.0 / n);
        double lambda = n;
        double change = 1;
        for (int step = 0; step < MOST_STEPS && change > SETTLED; step++) {
            double[] next = times(matrix, weights);
            // The weights have the sum 1, so what the matrix makes of that sum is the eigenvalue.
            lambda = sum(next);
            change = 0;
            for (int i = 0; i < n; i++) {
                next[i] /= lambda;
                change = StrictMath.max(change, StrictMath.abs(next[i] - weights[i]));
            }
            weights = next;
        }
        double index = n < 3 ? 0 : StrictMath.max(0, (lambda - n) / (n - 1));
        double ratio = n < 3 ? 0 : index / RANDOM_INDEX[n];
        return new PairwiseWeights(Arrays.stream(weights).boxed().toList(), lambda, index, ratio);
    }

    /** True up to CR = 0.10. */
    public boolean acceptable() {
        return consistencyRatio <= ACCEPTED;
    }

    private static void check(double[][] matrix) {
        int n = matrix.length;
        Need.between(n, 1, RANDOM_INDEX.length - 1, "number of things compared", "");
        for (double[] row : matrix) {
            Need.between(row.length, n, n, "number of comparisons in a row", "");
            for (double comparison : row) {
                Need.positive(comparison, "comparison", "");
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                double product = matrix[i][j] * matrix[j][i];
                if (StrictMath.abs(product - 1) > RECIPROCAL) {
                    throw Need.refused(
                            matrix[j][i],
                            "comparison of " + (j + 1) + " with " + (i + 1),
                            "",
                            "the other way round it is " + matrix[i][j] + ", so give 1 divided by that");
                }
            }
        }
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < vector.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                product[i] += matrix[i][j] * vector[j];
            }
        }
        return product;
    }

    /** In order: the sum of a stream is compensated and may differ in its last bit. */
    private static double sum(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum;
    }
}

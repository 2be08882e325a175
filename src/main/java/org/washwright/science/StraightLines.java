package org.washwright.science;

/** A printed table with straight lines between its rows. */
final class StraightLines {

    private StraightLines() {}

    /** The value at x; before the first row that of the first, after the last that of the last. */
    static double at(double x, double[] rows, double[] values) {
        if (x <= rows[0]) {
            return values[0];
        }
        for (int i = 1; i < rows.length; i++) {
            if (x <= rows[i]) {
                double share = (x - rows[i - 1]) / (rows[i] - rows[i - 1]);
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}

package org.washwright.assessment;

/**
 * The program as far as answers depend on it. The same request on the same program gives the same bytes.
 */
public final class Program {

    /** Version of the program, as in the build file. */
    public static final String VERSION = "0.1.0";

    /** Number of the set of formulas and of the form of answers; it rises with every change that can change an answer. */
    public static final int FORMULA_SET = 1;

    private Program() {}

    /** Both in one text. */
    public static String text() {
        return "washwright " + VERSION + ", formulas " + FORMULA_SET;
    }
}

package org.washwright.assessment;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/**
 * The program as far as answers depend on it. The same request on the same program gives the same bytes.
 */
public final class Program {

    /** Number of the set of formulas and of the form of answers; it rises with every change that can change an answer. */
    public static final int FORMULA_SET = 6;

    private static final String RESOURCE = "/org/washwright/version.properties";
    private static final String VERSION = read();

    private Program() {}

    /** The version this program was built as, such as {@code 0.1.0}. */
    public static String version() {
        return VERSION;
    }

    /** Version and formula set in one text. */
    public static String text() {
        return "washwright " + VERSION + ", formulas " + FORMULA_SET;
    }

    private static String read() {
        Properties properties = new Properties();
        try (InputStream in = Program.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException(RESOURCE + " is missing from the program; build it again");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version");
    }
}

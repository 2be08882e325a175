package org.washwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version this program was built as. */
public final class ProgramVersion {
    private static final String RESOURCE = "/org/washwright/version.properties";

    private ProgramVersion() {}

    /** The version, such as {@code 0.1.0}. */
    public static String text() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream(RESOURCE)) {
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

package org.washwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether somebody watches. Java can't ask that of standard error alone. */
final class Terminal {

    /** Set by the launcher, which can ask. */
    static final String PROPERTY = "washwright.terminal";

    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    private Terminal() {}

    static boolean isStandardError() {
        String told = System.getProperty(PROPERTY, "");
        if (!told.isEmpty()) {
            return told.equals("yes");
        }
        try {
            String device = Files.readSymbolicLink(STANDARD_ERROR).toString();
            return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty") || device.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            // No such file system here: a console on both other streams is the best sign there is.
            return System.console() != null;
        }
    }
}

package org.washwright.cli;

import java.util.OptionalInt;

/** Starts a headless command from a plain class path, past the service's own class loading; the launcher calls it. */
public final class Headless {

    private Headless() {}

    /** Runs the command and ends the process with its exit code. */
    public static void main(String[] args) {
        OptionalInt code = CommandLineEntry.run(args);
        if (code.isEmpty()) {
            System.err.println("washwright: the service is started by quarkus-run.jar");
        }
        System.exit(code.orElse(ExitCode.USAGE));
    }
}

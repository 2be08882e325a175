package org.washwright.cli;

import java.util.OptionalInt;

/**
 * Starts headless commands with nothing but a class path. The launcher uses it: the loader of the packaged service keeps
 * classes from being shared between runs, which costs a short command most of its time.
 */
public final class HeadlessMain {

    private HeadlessMain() {}

    /** Runs a headless command. */
    public static void main(String[] args) {
        // Before anything asks for a log: the service's start would have said so.
        System.setProperty("java.util.logging.manager", "org.jboss.logmanager.LogManager");
        OptionalInt answered = CommandLineEntry.run(args);
        if (answered.isEmpty()) {
            System.err.println("washwright: the service is not started this way; use java -jar quarkus-run.jar.");
        }
        System.exit(answered.orElse(ExitCode.USAGE));
    }
}

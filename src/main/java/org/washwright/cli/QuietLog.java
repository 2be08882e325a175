package org.washwright.cli;

import org.slf4j.helpers.NOP_FallbackServiceProvider;

/**
 * Turns the log off for headless commands: what they have to say they write themselves. Until the service has read its
 * settings every message of the rule engine, down to the finest, is formatted and queued for later; without a service that
 * later never comes, and rules ran at half their speed. Starting the log at all takes a tenth of a second.
 */
public final class QuietLog {

    private static final String PROVIDER = "slf4j.provider";

    private QuietLog() {}

    /** No messages from here on, unless the user named a log; to be called before anything is logged. */
    public static void apply() {
        if (System.getProperty(PROVIDER) == null) {
            System.setProperty(PROVIDER, NOP_FallbackServiceProvider.class.getName());
            // Nor a word about what was chosen.
            System.setProperty("slf4j.internal.verbosity", "WARN");
        }
    }
}

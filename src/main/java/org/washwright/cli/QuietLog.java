package org.washwright.cli;

import org.jboss.logmanager.Level;
import org.jboss.logmanager.LogContext;

/**
 * Turns the log down for headless commands. Until the service has read its settings every message down to the finest is
 * formatted and queued for later; without a service that later never comes, and rules ran at half their speed.
 */
public final class QuietLog {

    private QuietLog() {}

    /** Warnings and errors only, from here on. */
    public static void apply() {
        LogContext.getLogContext().getLogger("").setLevel(Level.WARN);
    }
}

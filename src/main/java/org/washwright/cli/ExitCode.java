package org.washwright.cli;

/** The exit codes of the program; scripts may rely on them. */
public final class ExitCode {
    /** The command did what was asked and has nothing to report. */
    public static final int OK = 0;
    /** The command ran, and its answer holds findings or the edition holds errors. */
    public static final int FINDINGS = 1;
    /** The command line itself is wrong. */
    public static final int USAGE = 2;
    /** A file could not be read or is not what it should be. */
    public static final int UNREADABLE_INPUT = 3;
    /** The service could not start: its data folder is in use, or the database did not come up. */
    public static final int CANNOT_START = 69;
    /** A fault of the program. */
    public static final int INTERNAL = 70;

    private ExitCode() {}
}

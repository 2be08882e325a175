package org.washwright.cli;

/** The exit codes of the program; scripts may rely on them. */
public final class ExitCode {
    /** The command did what was asked. */
    public static final int OK = 0;
    /** The command ran; an assessed task has no recommended process, or a checked edition has errors. */
    public static final int FINDINGS = 1;
    /** The command line itself is wrong. */
    public static final int USAGE = 2;
    /** A task or an edition could not be read; everything that is wrong with it is listed. */
    public static final int UNREADABLE_INPUT = 3;
    /** The service could not start: its data folder is in use, or the database did not come up. */
    public static final int CANNOT_START = 69;
    /** A fault of the program. */
    public static final int INTERNAL = 70;

    private ExitCode() {}
}

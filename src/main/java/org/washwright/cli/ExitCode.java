package org.washwright.cli;

/** The exit codes of the program; scripts may rely on them. */
public final class ExitCode {
    /** The command did what was asked. */
    public static final int OK = 0;
    /**
     * The command ran; an assessed task has no recommended process, a plant can't serve one of its tasks, some of many tasks were refused, or an edition has
     * errors, a case that fails or a finding that nobody accepted, or an answer does not follow from its request, or a change of a
     * rulebook breaks a case that held or a task that was answered, or an exported edition has errors.
     */
    public static final int FINDINGS = 1;
    /** The command line itself is wrong. */
    public static final int USAGE = 2;
    /** A task or an edition could not be read; everything that is wrong with it is listed. */
    public static final int UNREADABLE_INPUT = 3;
    /** The service could not start: its data folder is in use, or the database did not come up. */
    public static final int CANNOT_START = 69;
    /** A fault of the program. */
    public static final int INTERNAL = 70;
    /** The output could not be written: no space, for instance. */
    public static final int CANNOT_WRITE = 74;
    /** A signal ended the run after it had written what was begun; the system makes it of the signal. */
    public static final int INTERRUPTED = 130;
    /** Whoever read standard output has gone; the number that programs have for this by custom. */
    public static final int OUTPUT_CLOSED = 141;

    private ExitCode() {}
}

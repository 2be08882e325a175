package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.washwright.batch.Batch;
import org.washwright.batch.Status;
import org.washwright.batch.Tally;

/** What a run over many tasks says on standard error: notes on single records, and how it ended. */
final class BulkReport {

    private static final int NOTES = 20;

    private final String output;
    private final PrintWriter err;
    private int notes;
    private boolean lineOpen;
    private boolean over;

    BulkReport(String output, PrintWriter err) {
        this.output = output;
        this.err = err;
    }

    /** A short note; the whole is on the output. */
    synchronized void unanswered(String key, long record, long line, List<String> trouble) {
        notes++;
        if (notes <= NOTES) {
            String more = trouble.size() > 1 ? " (and " + (trouble.size() - 1) + " more)" : "";
            say("record " + record + (line > 0 ? ", line " + line : ", " + key) + ": "
                    + (trouble.isEmpty() ? "no answer" : trouble.get(0)) + more);
        } else if (notes == NOTES + 1) {
            say("Further records without an answer are told on the output alone.");
        }
    }

    /** A line of its own. */
    synchronized void say(String text) {
        if (over) {
            return;
        }
        clear();
        err.println(text);
        err.flush();
    }

    /** Draws a line that the next one replaces. */
    synchronized void draw(String text) {
        err.print("\r" + text + "\u001b[K");
        err.flush();
        lineOpen = true;
    }

    /** Takes the drawn line away. */
    synchronized void clear() {
        if (lineOpen) {
            err.print("\r\u001b[K");
            err.flush();
            lineOpen = false;
        }
    }

    int end(Batch.End end, Tally tally) {
        if (end.difference().isPresent()) {
            say("TWO ENGINES DISAGREE, " + end.difference().get());
            say(
                    "This is a fault of the program; please report it with that record. Don't rely on the answers written.");
            return ExitCode.INTERNAL;
        }
        if (end.writeFailure().isPresent()) {
            return unwritten(end.writeFailure().get(), tally);
        }
        if (end.readFailure().isPresent()) {
            say("The input can't be read on after record " + tally.done() + " ("
                    + end.readFailure().get().getMessage() + "). " + onward());
            return ExitCode.UNREADABLE_INPUT;
        }
        say(counts(tally));
        if (tally.count(Status.FAILED) > 0) {
            say("Where the program failed, the line says how; please report it with that record.");
            return ExitCode.INTERNAL;
        }
        return tally.count(Status.REFUSED) > 0 ? ExitCode.FINDINGS : ExitCode.OK;
    }

    private int unwritten(IOException failure, Tally tally) {
        String reason = String.valueOf(failure.getMessage());
        if (output.equals(Batch.STANDARD) && reason.toLowerCase(Locale.ROOT).contains("broken pipe")) {
            // Whoever read the lines has seen enough; that is no fault to speak of.
            return ExitCode.OUTPUT_CLOSED;
        }
        say("The output " + output + " can't be written after record " + tally.done() + " (" + reason
                + "). Make space or choose another place. " + onward());
        return ExitCode.CANNOT_WRITE;
    }

    int notClosed(IOException failure) {
        say("The output " + output + " could not be closed (" + failure.getMessage() + "). " + onward());
        return ExitCode.CANNOT_WRITE;
    }

    /** The last word: the program ends while the run still winds up. */
    synchronized void interrupted(Tally tally) {
        say("Stopped after record " + tally.done() + ". " + onward());
        over = true;
    }

    private String onward() {
        return output.equals(Batch.STANDARD)
                ? "A run with --out FILE can be taken up where it ends."
                : "The same command goes on from there.";
    }

    private static String counts(Tally tally) {
        return tally.done() + (tally.done() == 1 ? " record: " : " records: ") + tally.count(Status.ANSWERED)
                + " answered, " + tally.count(Status.REFUSED) + " refused, " + tally.count(Status.FAILED) + " failed; "
                + tally.kept() + " kept from an earlier run, " + (tally.done() - tally.kept()) + " evaluated, "
                + tally.judged() + " judged by compiled rules.";
    }
}

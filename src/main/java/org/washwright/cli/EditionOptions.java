package org.washwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.washwright.document.Hashes;
import org.washwright.exchange.EditionReader;
import org.washwright.library.EditionInput;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What all commands that examine an edition are told: which one, for which date, and how to write. */
final class EditionOptions {

    @Parameters(
            index = "0",
            paramLabel = "EDITION",
            arity = "0..1",
            description = "folder or zip bundle of the edition (default: the starter rulebook)")
    private Path edition;

    @Option(names = "--as-of", paramLabel = "DATE", description = "date for which law is read (default: today, UTC)")
    private String asOf;

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    /** Reads the edition; empty after its errors have been written. */
    Optional<EditionReader.Result> read(PrintWriter err) {
        EditionReader.Result read = edition == null ? EditionInput.readStarter() : EditionInput.read(edition);
        if (read.edition().isPresent()) {
            return Optional.of(read);
        }
        DiagnosticText.write(read.diagnostics().all(), err);
        err.println("The edition " + (edition == null ? EditionInput.STARTER : edition)
                + " can't be used. Mend it; \"check\" lists the same errors.");
        return Optional.empty();
    }

    /** An edition ready to answer many tasks. */
    static TaskEvaluator quick(Edition edition) {
        return TaskEvaluator.of(edition, Engine.QUICK);
    }

    String asOf() {
        return asOf == null ? LocalDate.now(ZoneOffset.UTC).toString() : asOf;
    }

    /** Where the edition stands; empty for the starter rulebook. */
    Optional<Path> path() {
        return Optional.ofNullable(edition);
    }

    boolean json() {
        return json;
    }

    /** Writes plain data as canonical JSON. */
    static void write(Object data, PrintWriter out) {
        out.print(new String(Hashes.canonical(data), StandardCharsets.UTF_8));
        out.flush();
    }
}

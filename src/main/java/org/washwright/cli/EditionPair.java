package org.washwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.washwright.impact.meaning.State;
import org.washwright.library.EditionInput;

/** Two editions that are held against each other. */
record EditionPair(State before, State after) {

    /** Reads both; empty after the errors of both have been written. */
    static Optional<EditionPair> read(Path before, Path after, PrintWriter err) {
        Optional<State> old = state(before, err);
        Optional<State> now = state(after, err);
        return old.isPresent() && now.isPresent()
                ? Optional.of(new EditionPair(old.get(), now.get()))
                : Optional.empty();
    }

    private static Optional<State> state(Path path, PrintWriter err) {
        EditionInput.Opened opened = EditionInput.open(Optional.of(path));
        if (opened.result().edition().isEmpty()) {
            DiagnosticText.write(opened.result().diagnostics().all(), err);
            err.println("The edition " + path + " can't be used. Mend it; \"check\" lists the same errors.");
            return Optional.empty();
        }
        return Optional.of(State.of(
                opened.result().edition().get(),
                opened.result().checks().cases(),
                opened.files().files()));
    }
}

package org.washwright.editing.text;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.assist.Assistant;
import org.washwright.assist.Help;
import org.washwright.assist.Proposals;
import org.washwright.assist.SaidRule;
import org.washwright.document.Diagnostic;
import org.washwright.document.Severity;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;

/** Answers an editor's questions about a text that is being written. */
@ApplicationScoped
class Desk {
    private final Editions editions;

    Desk(Editions editions) {
        this.editions = editions;
    }

    /**
     * What is wrong with an edition.
     *
     * @param errorCount errors of all files
     * @param warningCount warnings of all files
     * @param here what was found in the file that is written
     * @param elsewhere what was found in other files
     */
    record Found(int errorCount, int warningCount, List<Marked> here, List<Marked> elsewhere) {
        /** Whether the file itself has an error. */
        public boolean errorsHere() {
            return here.stream().anyMatch(Marked::error);
        }
    }

    /** Something found; {@code error} is false for a warning. */
    record Marked(boolean error, ProblemError what) {}

    Found found(UUID workspace, UUID id, WrittenText written) {
        return found(editions.readingWith(workspace, id, written.file(), written.bytes()), written.file());
    }

    static Found found(EditionReader.Inspection inspection, String file) {
        List<Diagnostic> all = inspection.diagnostics().all();
        int errors = (int) all.stream().filter(Desk::isError).count();
        return new Found(
                errors,
                all.size() - errors,
                marked(all.stream().filter(d -> d.place().file().equals(file)).toList()),
                marked(all.stream().filter(d -> !d.place().file().equals(file)).toList()));
    }

    private static List<Marked> marked(List<Diagnostic> some) {
        return some.stream()
                .map(d -> new Marked(isError(d), ProblemErrors.of(List.of(d)).get(0)))
                .toList();
    }

    private static boolean isError(Diagnostic d) {
        return d.severity() == Severity.ERROR;
    }

    Proposals proposals(UUID workspace, UUID id, WrittenText written, int offset) {
        return assistant(words(workspace, id, written)).proposals(written.file(), written.text(), offset);
    }

    Optional<Help> help(UUID workspace, UUID id, WrittenText written, int offset) {
        return assistant(words(workspace, id, written)).help(written.file(), written.text(), offset);
    }

    List<SaidRule> said(UUID workspace, UUID id, WrittenText written) {
        Edition words = editions.readingWith(workspace, id, written.file(), written.bytes())
                .readable();
        return assistant(words).said(written.file(), written.text());
    }

    /** Rules add no word to the catalogue; of every other file the words count as they are being written. */
    private Edition words(UUID workspace, UUID id, WrittenText written) {
        boolean rules = written.file().startsWith("rules/") || written.file().startsWith("tables/");
        EditionReader.Inspection inspection = rules
                ? editions.inspection(workspace, id)
                : editions.readingWith(workspace, id, written.file(), written.bytes());
        return inspection.readable();
    }

    private static Assistant assistant(Edition words) {
        return new Assistant(words, new DrlReader());
    }
}

package org.washwright.rulebook;

import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.document.Severity;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.Checks;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.exchange.ReadFiles;
import org.washwright.rule.Edition;

/**
 * What came of reading the files of an edition.
 *
 * @param name name of the rulebook, {@link #UNNAMED} when the files do not tell it
 * @param title what a reader calls it
 * @param textHash hash of the files
 * @param edition the content, unless there is an error
 * @param checks how it is to be checked
 * @param diagnostics everything found
 */
public record Reading(
        String name,
        String title,
        String textHash,
        Optional<Edition> edition,
        Checks checks,
        List<Diagnostic> diagnostics) {

    /** Name of a rulebook whose files do not tell it. */
    public static final String UNNAMED = "unnamed";

    private static final int TITLE_LENGTH = 200;

    /** Shared by all readings of the service: of drafts that are written to, most files are as they were. It has an end. */
    private static final ReadFiles BEFORE = new ReadFiles();

    static Reading of(EditionFiles files) {
        EditionReader.Result result = reader().read(files);
        String title = head(files, "title");
        return new Reading(
                name(files),
                title.isBlank() ? "Untitled" : title.substring(0, Math.min(TITLE_LENGTH, title.length())),
                files.textHash(),
                result.edition(),
                result.checks(),
                result.diagnostics().all());
    }

    /** What is readable of files that are being written. */
    static EditionReader.Inspection inspect(EditionFiles files) {
        return reader().inspect(files);
    }

    private static EditionReader reader() {
        return new EditionReader(new DrlReader(), BEFORE);
    }

    /** The name that the files give their rulebook. */
    static String name(EditionFiles files) {
        String name = head(files, "name");
        return name.matches("[a-z][a-z0-9-]{0,59}") ? name : UNNAMED;
    }

    /** How many errors were found. */
    public int errors() {
        return count(Severity.ERROR);
    }

    /** How many warnings were found. */
    public int warnings() {
        return count(Severity.WARNING);
    }

    private int count(Severity severity) {
        return (int) diagnostics.stream().filter(d -> d.severity() == severity).count();
    }

    /** A line of edition.yaml, readable even when others are wrong. */
    private static String head(EditionFiles files, String key) {
        byte[] bytes = files.files().getOrDefault("edition.yaml", new byte[0]);
        return DocumentReader.read("edition.yaml", bytes, new Diagnostics())
                .filter(Node.MapNode.class::isInstance)
                .flatMap(node -> ((Node.MapNode) node).get(key))
                .map(Node::shown)
                .orElse("")
                .strip();
    }
}

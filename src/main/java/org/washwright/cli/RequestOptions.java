package org.washwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.assessment.Wishes;
import org.washwright.exchange.EditionReader;
import org.washwright.library.EditionInput;
import org.washwright.library.Engine;
import picocli.CommandLine.Option;

/** The options that say what is asked besides the tasks: the same for one task and for many. */
final class RequestOptions {

    @Option(
            names = "--rulebook",
            paramLabel = "EDITION",
            description = "folder or zip bundle of the edition (default: rules/starter below the working directory or,"
                    + " where there is none, the one that came with the program)")
    private Path rulebook;

    @Option(names = "--as-of", paramLabel = "DATE", description = "date for which law is read (default: today, UTC)")
    private String asOf;

    @Option(names = "--weight", paramLabel = "AREA=NUMBER", description = "weight of an area instead of the edition's")
    private Map<String, Double> weights = new TreeMap<>();

    @Option(
            names = "--compare",
            paramLabel = "AREA/AREA=NUMBER",
            description =
                    "how many times as much the first area matters as the second, 1/9 to 9 as a number; instead of"
                            + " weights")
    private Map<String, Double> comparisons = new TreeMap<>();

    @Option(
            names = "--assume",
            paramLabel = "ID=VALUE",
            description = "value of an assumption instead of the edition's")
    private Map<String, String> assumptions = new TreeMap<>();

    @Option(names = "--seed", description = "seed for anything sampled (default: 0)", defaultValue = "0")
    private long seed;

    @Option(
            names = "--interpret",
            description = "answer with the plain interpreter: nothing is compiled, and the answer is the same")
    private boolean interpret;

    /** Reads the edition asked for. */
    EditionReader.Result edition() {
        return rulebook == null ? EditionInput.readStarter() : EditionInput.read(rulebook);
    }

    /** What messages call the edition. */
    String editionName() {
        return (rulebook == null ? EditionInput.STARTER : rulebook).toString();
    }

    /** The engine asked for, or the one that a command uses by itself. */
    Engine engine(Engine usual) {
        return interpret ? Engine.PLAIN : usual;
    }

    /** The date given, if one was. */
    Optional<String> asOf() {
        return Optional.ofNullable(asOf);
    }

    /** What is wished, as of the date given, else today. */
    Wishes wishes() {
        return wishes(LocalDate.now(ZoneOffset.UTC).toString());
    }

    /** What is wished, as of the date given, else another. */
    Wishes wishes(String usualDate) {
        return new Wishes(weights, comparisons, assumptions, asOf().orElse(usualDate), seed);
    }
}

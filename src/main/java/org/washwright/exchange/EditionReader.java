package org.washwright.exchange;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.cases.CaseReader;
import org.washwright.document.Diagnostics;
import org.washwright.rule.Edition;
import org.washwright.rule.MeaningHash;
import org.washwright.rule.syntax.RuleTextReader;

/** Reads and checks a whole edition. Every error of every file comes at once. */
public final class EditionReader {

    private final RuleTextReader ruleText;
    private final ReadFiles before;

    /** A reader that hands rule text to {@code ruleText}. */
    public EditionReader(RuleTextReader ruleText) {
        this(ruleText, new ReadFiles());
    }

    /** The same, which reads again only what {@code before} does not hold. */
    public EditionReader(RuleTextReader ruleText, ReadFiles before) {
        this.ruleText = ruleText;
        this.before = before;
    }

    /**
     * What came of reading.
     *
     * @param edition the edition, unless there was an error
     * @param checks how it is to be checked
     * @param diagnostics all that was found
     */
    public record Result(Optional<Edition> edition, Checks checks, Diagnostics diagnostics) {

        /** Nothing came of it. */
        public static Result failed(Diagnostics diagnostics) {
            return new Result(Optional.empty(), Checks.NONE, diagnostics);
        }
    }

    /**
     * What is readable of files that may be wrong, for whoever is writing them.
     *
     * @param readable every word and every rule without an error; without a meaning hash. Nothing is answered with it
     * @param checks how it is to be checked; empty after an error
     * @param diagnostics all that was found
     */
    public record Inspection(Edition readable, Checks checks, Diagnostics diagnostics) {}

    /** Reads the files of an edition. */
    public Result read(EditionFiles files) {
        return read(files, new Diagnostics());
    }

    /** The same, adding to what was found while the files were gathered. */
    public Result read(EditionFiles files, Diagnostics diagnostics) {
        Inspection inspection = new PartReader(ruleText, before, files, diagnostics).inspect();
        if (diagnostics.hasErrors()) {
            return Result.failed(diagnostics);
        }
        Map<String, byte[]> caseBytes = new TreeMap<>(files.files());
        caseBytes.keySet().removeIf(name -> !name.startsWith(CaseReader.FOLDER));
        return new Result(
                Optional.of(MeaningHash.sign(inspection.readable(), caseBytes)), inspection.checks(), diagnostics);
    }

    /** Finds the same as {@link #read}, and gives what is sound even where something is wrong. */
    public Inspection inspect(EditionFiles files) {
        return new PartReader(ruleText, before, files, new Diagnostics()).inspect();
    }
}

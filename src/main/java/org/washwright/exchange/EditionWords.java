package org.washwright.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.document.Diagnostic;
import org.washwright.drools.DrlReader;
import org.washwright.rule.Edition;

/**
 * The words of an edition without its rules: catalogue, criteria, assumptions and sources. They can be read while rules,
 * tables or trees are still broken, and in a fraction of the time.
 *
 * @param edition an edition without rules, unless its words have errors
 * @param found what is wrong in the files of words
 */
public record EditionWords(Optional<Edition> edition, List<Diagnostic> found) {

    /** The files that hold words. */
    public static EditionFiles files(EditionFiles all) {
        Map<String, byte[]> words = new TreeMap<>(all.files());
        words.keySet().removeIf(name -> !isOfWords(name));
        return new EditionFiles(words);
    }

    /** Whether a file holds words. */
    public static boolean isOfWords(String path) {
        return path.startsWith("catalogue/")
                || List.of("edition.yaml", "grading.yaml", "assumptions.yaml").contains(path);
    }

    /** Reads the words among these files. */
    public static EditionWords read(EditionFiles all) {
        EditionReader.Result result = new EditionReader(new DrlReader()).read(files(all));
        return new EditionWords(result.edition(), result.diagnostics().all());
    }
}

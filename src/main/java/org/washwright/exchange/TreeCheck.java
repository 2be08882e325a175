package org.washwright.exchange;

import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.check.Terms;

/**
 * One question tree read against the words of its edition, while it is written.
 *
 * @param tree the tree, unless something of it can't be read
 * @param found what is wrong
 */
public record TreeCheck(Optional<QuestionTree> tree, List<Diagnostic> found) {

    /**
     * Reads a tree.
     *
     * @param words an edition whose catalogue and sources hold
     * @param path name of the file
     */
    public static TreeCheck of(Edition words, String path, String text) {
        Diagnostics diagnostics = new Diagnostics();
        Terms terms = new Terms(words.catalogue(), words.types(), words.grading(), words.sources());
        Optional<QuestionTree> tree = DocumentReader.read(path, text, diagnostics)
                .flatMap(node -> new TreeReader(terms, diagnostics).read(node));
        return new TreeCheck(tree, diagnostics.all());
    }
}

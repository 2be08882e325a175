package org.washwright.rule.syntax;

import java.util.List;
import org.washwright.document.Diagnostics;

/** Reads rule text into what its author wrote. */
public interface RuleTextReader {

    /**
     * Reads one file.
     *
     * @param file name for messages
     * @param text the text
     * @param diagnostics takes every refusal with its place
     * @return the rules that could be read
     */
    List<SyntaxRule> read(String file, String text, Diagnostics diagnostics);
}

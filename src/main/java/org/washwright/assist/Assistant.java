package org.washwright.assist;

import java.util.List;
import java.util.Optional;
import org.washwright.rule.Edition;
import org.washwright.rule.syntax.RuleTextReader;

/** Helps whoever writes a file of an edition. Nothing here changes anything; the text may be broken anywhere. */
public final class Assistant {

    private static final String RULES = ".drl";

    private final Edition words;
    private final RuleTextReader reader;

    /**
     * Help by the words of an edition.
     *
     * @param words what is readable of the edition
     * @param reader reads rule text
     */
    public Assistant(Edition words, RuleTextReader reader) {
        this.words = words;
        this.reader = reader;
    }

    /** What may stand at an offset of a text, 0 being its start; an offset past the end counts as the end. */
    public Proposals proposals(String file, String text, int offset) {
        int caret = Math.max(0, Math.min(offset, text.length()));
        return file.endsWith(RULES)
                ? new RuleProposals(words).at(text, caret)
                : new PlainFiles(words).at(file, text, caret);
    }

    /** What the word at an offset means; empty where nothing is known. */
    public Optional<Help> help(String file, String text, int offset) {
        int caret = Math.max(0, Math.min(offset, text.length()));
        return file.endsWith(RULES) ? new RuleHelp(words).at(text, caret) : new PlainFiles(words).help(text, caret);
    }

    /** What the rules of a file say, in the order of the file; {@code words} has to be read with this text. */
    public List<SaidRule> said(String file, String text) {
        return new SaidRules(words, reader).of(file, text);
    }
}

package org.washwright.editing.text;

import java.nio.charset.StandardCharsets;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;

/**
 * The text of a file as it stands in an editor, not kept anywhere.
 *
 * @param file name of the file in its edition
 * @param text the text
 */
record WrittenText(String file, String text) {

    /** Takes bytes that may be the file of an edition; refused when its name, size or encoding is none. */
    static WrittenText of(String file, byte[] bytes) {
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles.checkFile(file, bytes.length, diagnostics);
        String text = DocumentReader.decode(file, bytes, diagnostics).orElse("");
        if (diagnostics.hasErrors()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        return new WrittenText(file, text);
    }

    byte[] bytes() {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Offset of a place, both from 1; a place past the end of a line or of the text counts as that end. */
    int offset(int line, int column) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                return text.length();
            }
            start = end + 1;
        }
        int end = text.indexOf('\n', start);
        return Math.min(start + Math.max(0, column - 1), end < 0 ? text.length() : end);
    }
}

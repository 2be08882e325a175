package org.washwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;

/**
 * Catalogue, grading, assumptions and all other files of an edition in one text, each behind a line {@code === name}. One
 * text, because what a sound file beside the tried one covers would hide what the tried one does.
 */
public final class CatalogueFuzz {

    /** Stands before the name of each file. */
    static final String MARK = "=== ";

    private static final int MOST_FILES = 60;

    private CatalogueFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        // A letter a byte, so that bytes that are no text come through.
        String text = "\n" + new String(data, StandardCharsets.ISO_8859_1);
        Map<String, byte[]> files = new TreeMap<>();
        for (String part : text.split("\n" + MARK, MOST_FILES)) {
            int end = part.indexOf('\n');
            // Names are checked where files are gathered, which the target of bundles tries.
            if (end > 0 && part.substring(0, end).matches("[A-Za-z0-9._/-]+")) {
                files.put(part.substring(0, end), part.substring(end + 1).getBytes(StandardCharsets.ISO_8859_1));
            }
        }
        Promise.edition(new EditionFiles(files), new Diagnostics());
    }
}

package org.washwright.rulebook;

import java.nio.charset.StandardCharsets;
import org.washwright.document.Hashes;

/**
 * A file of an edition as it stands.
 *
 * @param path its name within the edition
 * @param tag changes with every byte; whoever changes the file names the one that was read
 * @param bytes its content
 */
public record KeptFile(String path, String tag, byte[] bytes) {
    private static final int TAG_LENGTH = 32;

    static KeptFile of(String path, byte[] bytes) {
        return new KeptFile(path, tagOf(bytes), bytes);
    }

    /** The tag of these bytes. */
    public static String tagOf(byte[] bytes) {
        return Hashes.sha256(bytes).substring(0, TAG_LENGTH);
    }

    /** The content as text; the files of a draft are UTF-8, and one that is not shows replacement characters. */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}

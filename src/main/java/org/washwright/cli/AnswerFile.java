package org.washwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** An answer as "assess --json" wrote it, told from a task by what it holds. */
final class AnswerFile {

    /** Most bytes of an answer; those of the largest tasks have a few millions. */
    private static final int MOST = 64_000_000;

    private AnswerFile() {}

    /** True when a file holds an answer; false for a task and for what can't be read, which reading it as a task tells. */
    static boolean isAnswer(String file) {
        try {
            byte[] bytes = bytes(file);
            int i = 0;
            while (i < bytes.length && Character.isWhitespace(bytes[i])) {
                i++;
            }
            if (i == bytes.length || bytes[i] != '{') {
                return false;
            }
            Map<?, ?> map = Hashes.read(bytes, Map.class);
            return map.containsKey("requestHash") && map.containsKey("firings");
        } catch (IOException e) {
            return false;
        }
    }

    /** The answer; empty after an error. */
    static Optional<FrozenAnswer> read(String file, Diagnostics diagnostics) {
        try {
            return Optional.of(FrozenAnswer.read(bytes(file)));
        } catch (IOException e) {
            diagnostics.add(Message.BROKEN_JSON, Place.ofFile(file), "", "it is no answer that this program wrote");
            return Optional.empty();
        }
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = Files.newInputStream(Path.of(file))) {
            byte[] bytes = in.readNBytes(MOST + 1);
            if (bytes.length > MOST) {
                throw new IOException("more than an answer can have");
            }
            return bytes;
        }
    }
}

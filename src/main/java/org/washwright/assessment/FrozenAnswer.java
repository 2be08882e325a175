package org.washwright.assessment;

import java.io.IOException;
import org.washwright.document.Hashes;

/**
 * An answer with its canonical bytes (RFC 8785) and their SHA-256. The same request on the same program version gives the
 * same bytes by page, REST and file.
 */
public record FrozenAnswer(Answer answer, byte[] bytes, String hash) {

    /**
     * Reads an answer from the bytes that it was frozen as.
     *
     * @throws IOException when the bytes hold no answer
     */
    public static FrozenAnswer read(byte[] bytes) throws IOException {
        return new FrozenAnswer(Hashes.read(bytes, Answer.class), bytes, Hashes.sha256(bytes));
    }

    /** Freezes an answer. */
    public static FrozenAnswer of(Answer answer) {
        byte[] bytes = Hashes.canonical(answer);
        return new FrozenAnswer(answer, bytes, Hashes.sha256(bytes));
    }
}

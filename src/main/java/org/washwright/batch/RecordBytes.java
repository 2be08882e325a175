package org.washwright.batch;

import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import org.washwright.document.Hashes;
import org.washwright.task.TaskReader;

/** The bytes of one record as they come in. Past the most a task may have they are only counted and hashed, not kept. */
final class RecordBytes {

    private static final int LIMIT = TaskReader.MAX_BYTES;
    private static final int START = 1024;
    private static final int CHUNK = 8192;

    private byte[] kept = new byte[START];
    private byte[] passing;
    private MessageDigest digest;
    private int passed;
    private long length;

    void add(int b) {
        if (length < LIMIT) {
            if (length == kept.length) {
                kept = Arrays.copyOf(kept, Math.min(LIMIT, kept.length * 2));
            }
            kept[(int) length] = (byte) b;
        } else {
            pass(b);
        }
        length++;
    }

    private void pass(int b) {
        if (digest == null) {
            digest = Hashes.digest();
            digest.update(kept, 0, LIMIT);
            passing = new byte[CHUNK];
        }
        passing[passed++] = (byte) b;
        if (passed == CHUNK) {
            digest.update(passing);
            passed = 0;
        }
    }

    boolean isEmpty() {
        return length == 0;
    }

    /** True when nothing but blanks and tabs came in. */
    boolean isBlank() {
        for (int i = 0; i < Math.min(length, kept.length); i++) {
            if (kept[i] != ' ' && kept[i] != '\t') {
                return false;
            }
        }
        return length <= kept.length;
    }

    /** The record, and an empty holder for the next one. */
    InputRecord take(long number, long line, String key) {
        InputRecord record;
        if (digest == null) {
            record = InputRecord.of(number, line, key, Arrays.copyOf(kept, (int) length));
        } else {
            digest.update(passing, 0, passed);
            record = InputRecord.tooLarge(
                    number, line, key, length, HexFormat.of().formatHex(digest.digest()));
        }
        clear();
        return record;
    }

    void clear() {
        if (kept.length > CHUNK) {
            kept = new byte[START];
        }
        passing = null;
        digest = null;
        passed = 0;
        length = 0;
    }
}

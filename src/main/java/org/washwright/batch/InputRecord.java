package org.washwright.batch;

import java.nio.file.Path;
import java.util.List;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.task.TaskReader;

/** One record of the input as it stands there: a line, a row or a file. */
final class InputRecord {

    private static final byte[] NOTHING = new byte[0];

    private final long number;
    private final long line;
    private final String key;
    private final byte[] bytes;
    private final List<Diagnostic> unusable;
    private String sha256;

    private InputRecord(long number, long line, String key, byte[] bytes, List<Diagnostic> unusable, String sha256) {
        this.number = number;
        this.line = line;
        this.key = key;
        this.bytes = bytes;
        this.unusable = List.copyOf(unusable);
        this.sha256 = sha256;
    }

    static InputRecord of(long number, long line, String key, byte[] bytes) {
        return new InputRecord(number, line, key, bytes, List.of(), null);
    }

    /** A record that was passed over because no task may be so large. */
    static InputRecord tooLarge(long number, long line, String key, long length, String sha256) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(
                Message.TOO_LARGE, new Place(key, 0, 0, ""), length + " bytes", TaskReader.MAX_BYTES + " bytes");
        return new InputRecord(number, line, key, NOTHING, diagnostics.all(), sha256);
    }

    /** A file that can't be read. */
    static InputRecord unreadable(long number, String key, Path file) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(Message.UNREADABLE, Place.ofFile(key), file.toString());
        return new InputRecord(number, 0, key, NOTHING, diagnostics.all(), null);
    }

    /** Number from 1 in the order of the input. */
    long number() {
        return number;
    }

    /** Line of the input it starts on, from 1; 0 when the record is a file of its own. */
    long line() {
        return line;
    }

    /** What it is called: its file, or the input's name. */
    String key() {
        return key;
    }

    /** Its bytes without the line end. */
    byte[] bytes() {
        return bytes;
    }

    /** What makes it unusable before anybody has read it; usually nothing. */
    List<Diagnostic> unusable() {
        return unusable;
    }

    /** SHA-256 of its bytes, hexadecimal. One thread after the other may ask; the hand-over orders them. */
    String sha256() {
        if (sha256 == null) {
            sha256 = Hashes.sha256(bytes);
        }
        return sha256;
    }
}

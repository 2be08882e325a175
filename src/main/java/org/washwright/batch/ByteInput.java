package org.washwright.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;

/** Bytes one by one out of a buffer, counted. */
final class ByteInput implements Closeable {

    static final int END = -1;
    private static final int SIZE = 1 << 16;
    private static final int[] MARK = {0xEF, 0xBB, 0xBF};

    private final InputStream in;
    private final byte[] buffer = new byte[SIZE];
    private int at;
    private int filled;
    private volatile long before;

    ByteInput(InputStream in) {
        this.in = in;
    }

    /** The next byte, or {@link #END}. */
    int read() throws IOException {
        if (at == filled && !fill()) {
            return END;
        }
        return buffer[at++] & 0xFF;
    }

    /** The next byte without taking it. */
    int peek() throws IOException {
        return at == filled && !fill() ? END : buffer[at] & 0xFF;
    }

    private boolean fill() throws IOException {
        before += filled;
        at = 0;
        filled = Math.max(0, in.read(buffer));
        return filled > 0;
    }

    /** Passes over a byte order mark at the start; editors on some systems put one before UTF-8 text. */
    void skipMark() throws IOException {
        int n = 0;
        // A pipe may hand out its first bytes one by one.
        while (filled < MARK.length && n >= 0) {
            n = in.read(buffer, filled, SIZE - filled);
            filled += Math.max(0, n);
        }
        boolean marked = filled >= MARK.length;
        for (int i = 0; marked && i < MARK.length; i++) {
            marked = (buffer[i] & 0xFF) == MARK[i];
        }
        at = marked ? MARK.length : 0;
    }

    /** Bytes read from the stream so far, up to a buffer more than were handed out. */
    long position() {
        return before;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}

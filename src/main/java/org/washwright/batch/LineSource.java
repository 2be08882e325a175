package org.washwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.washwright.document.Diagnostics;

/** One task as JSON a line. Blank lines are passed over. */
final class LineSource implements RecordSource {

    private final ByteInput in;
    private final String name;
    private final long size;
    private final RecordBytes bytes = new RecordBytes();
    private long records;
    private long lines;

    /**
     * Reads lines.
     *
     * @param size bytes of the whole, or -1 when it is not known
     */
    LineSource(InputStream in, String name, long size) throws IOException {
        this.in = new ByteInput(in);
        this.name = name;
        this.size = size;
        this.in.skipMark();
    }

    @Override
    public Optional<InputRecord> next() throws IOException {
        while (in.peek() != ByteInput.END) {
            lines++;
            line();
            if (!bytes.isBlank()) {
                return Optional.of(bytes.take(++records, lines, name));
            }
            bytes.clear();
        }
        return Optional.empty();
    }

    private void line() throws IOException {
        for (int b = in.read(); b != ByteInput.END && b != '\n'; b = in.read()) {
            if (b != '\r' || in.peek() != '\n') {
                bytes.add(b);
            }
        }
    }

    @Override
    public Optional<byte[]> document(InputRecord record, Diagnostics diagnostics) {
        return Optional.of(record.bytes());
    }

    @Override
    public double share() {
        return size <= 0 ? UNKNOWN : Math.min(1, in.position() / (double) size);
    }

    @Override
    public String signature() {
        return "";
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}

package org.washwright.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** Lines to a stream, each handed on at once. Nothing is known of earlier runs. */
final class StreamSink implements ResultSink {

    private final String name;
    private final OutputStream out;

    StreamSink(String name, OutputStream out) {
        this.name = name;
        this.out = out;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Optional<Kept> kept() {
        return Optional.empty();
    }

    @Override
    public void write(byte[] line) throws IOException {
        out.write(line);
        out.flush();
    }

    @Override
    public void finish() throws IOException {
        out.flush();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}

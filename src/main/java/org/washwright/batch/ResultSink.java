package org.washwright.batch;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;

/** Where the lines of a run go. */
interface ResultSink extends Closeable {

    /**
     * A line that an earlier run wrote.
     *
     * @param sha256 of the record it is about
     */
    record Kept(long record, String sha256, Status status) {}

    /** What messages call it. */
    String name();

    /** The next line of an earlier run; empty when all are read, and from then on. */
    Optional<Kept> kept() throws IOException;

    /** Adds a line, ended by a line feed, in one go: a killed run leaves no more than one torn line. */
    void write(byte[] line) throws IOException;

    /** Every line is written. */
    void finish() throws IOException;
}

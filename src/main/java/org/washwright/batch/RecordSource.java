package org.washwright.batch;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;

/** The records of an input, one after the other. Records are taken by one thread and read by many. */
interface RecordSource extends Closeable {

    /** What the share is when the whole is not known. */
    double UNKNOWN = -1;

    /** The next record, or empty at the end. */
    Optional<InputRecord> next() throws IOException;

    /** The task document of a record; empty when there is none, and {@code diagnostics} says why. Safe for many threads. */
    Optional<byte[]> document(InputRecord record, Diagnostics diagnostics);

    /** A diagnostic on a record's document, put where its author sees it. */
    default Diagnostic placed(Diagnostic found, InputRecord record) {
        Place p = found.place();
        // A record is one line, read as if it were the first.
        return found.at(new Place(record.key(), (int) record.line(), p.column(), p.pointer()));
    }

    /** How much of the input has been taken, 0 to 1, or {@link #UNKNOWN}. */
    double share();

    /** What decides besides the records themselves, such as the header of a table; empty when nothing does. */
    String signature();
}

package org.washwright.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads back the lines of an earlier run, up to the first that is torn or is none of ours. */
final class KeptLines implements Closeable {

    private static final JsonFactory JSON = new JsonFactory();

    private final ByteInput in;
    private long end;
    private long expected = 1;
    private boolean over;

    private KeptLines(InputStream in) {
        this.in = new ByteInput(in);
    }

    static KeptLines of(Path file) throws IOException {
        return new KeptLines(Files.newInputStream(file));
    }

    Optional<ResultSink.Kept> next() throws IOException {
        if (over) {
            return Optional.empty();
        }
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int b = in.read();
        while (b != ByteInput.END && b != '\n') {
            line.write(b);
            b = in.read();
        }
        // Without its line feed a line was torn by a kill, whatever can be read of it.
        Optional<ResultSink.Kept> kept = b == '\n' ? parse(line.toByteArray()) : Optional.empty();
        // Blocks lost with the power can leave a hole; what follows it does not count.
        kept = kept.filter(k -> k.record() == expected);
        over = kept.isEmpty();
        if (!over) {
            expected++;
            end += line.size() + 1L;
        }
        return kept;
    }

    /** Bytes of the file that are whole lines of ours. */
    long end() {
        return end;
    }

    private static Optional<ResultSink.Kept> parse(byte[] line) throws IOException {
        long record = 0;
        String sha256 = "";
        Optional<Status> status = Optional.empty();
        try (JsonParser parser = JSON.createParser(line)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                switch (name) {
                    case "record" -> record = parser.getValueAsLong();
                    case "sha256" -> sha256 = parser.getText();
                    case "status" -> status = Status.byWord(parser.getText());
                    default -> parser.skipChildren();
                }
            }
            if (parser.currentToken() != JsonToken.END_OBJECT || parser.nextToken() != null) {
                return Optional.empty();
            }
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
        long number = record;
        String hash = sha256;
        return status.map(s -> new ResultSink.Kept(number, hash, s));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}

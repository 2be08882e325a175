package org.washwright.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.washwright.document.Hashes;
import org.washwright.document.Message;
import org.washwright.task.TaskReader;

class LineSourceTest {

    @Test
    void records_keep_the_physical_number_of_their_line_when_blank_lines_are_passed_over() throws IOException {
        List<InputRecord> records = all(bytes("{1}\n\n  \t\n{2}\r\n\r\n{3}"));
        assertEquals(
                List.of("1:1:{1}", "2:4:{2}", "3:6:{3}"),
                records.stream()
                        .map(r -> r.number() + ":" + r.line() + ":" + text(r))
                        .toList());
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_first_record_even_when_it_comes_byte_by_byte() throws IOException {
        InputStream slow = new InputStream() {
            private final InputStream in = new ByteArrayInputStream(bytes("\uFEFF{1}\n{2}\n"));

            @Override
            public int read() throws IOException {
                return in.read();
            }

            @Override
            public int read(byte[] b, int off, int len) throws IOException {
                return in.read(b, off, Math.min(1, len));
            }
        };
        List<InputRecord> records = all(slow);
        assertEquals(
                List.of("{1}", "{2}"),
                records.stream().map(LineSourceTest::text).toList());
        assertEquals(Hashes.sha256("{1}"), records.get(0).sha256());
    }

    @Test
    void a_carriage_return_within_a_line_stays() throws IOException {
        assertArrayEquals(bytes("a\rb"), all(bytes("a\rb\n")).get(0).bytes());
    }

    @Test
    void a_line_longer_than_a_task_may_be_is_counted_and_hashed_but_not_kept() throws IOException {
        long length = 30_000_000;
        InputStream endless = new InputStream() {
            private long left = length;

            @Override
            public int read() {
                return left-- > 0 ? 'x' : -1;
            }

            @Override
            public int read(byte[] b, int off, int len) {
                int n = (int) Math.min(left, len);
                java.util.Arrays.fill(b, off, off + n, (byte) 'x');
                left -= n;
                return n == 0 ? -1 : n;
            }
        };
        List<InputRecord> records = all(new SequenceInputStream(endless, new ByteArrayInputStream(bytes("\n{2}\n"))));
        InputRecord large = records.get(0);
        assertEquals(0, large.bytes().length);
        assertEquals(Message.TOO_LARGE, large.unusable().get(0).message());
        assertTrue(
                large.unusable().get(0).text().contains(length + " bytes"),
                large.unusable().toString());
        assertEquals(Hashes.sha256("x".repeat((int) length)), large.sha256());
        assertEquals("2:2:{2}", records.get(1).number() + ":" + records.get(1).line() + ":" + text(records.get(1)));
    }

    @Test
    void a_line_of_just_the_most_bytes_is_kept() throws IOException {
        String line = "y".repeat(TaskReader.MAX_BYTES);
        assertArrayEquals(bytes(line), all(bytes(line + "\n")).get(0).bytes());
        assertEquals(0, all(bytes(line + "z\n")).get(0).bytes().length);
    }

    private static List<InputRecord> all(byte[] input) throws IOException {
        return all(new ByteArrayInputStream(input));
    }

    private static List<InputRecord> all(InputStream input) throws IOException {
        List<InputRecord> records = new ArrayList<>();
        try (LineSource source = new LineSource(input, "tasks.ndjson", -1)) {
            for (Optional<InputRecord> r = source.next(); r.isPresent(); r = source.next()) {
                records.add(r.get());
            }
        }
        return records;
    }

    private static String text(InputRecord record) {
        return new String(record.bytes(), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

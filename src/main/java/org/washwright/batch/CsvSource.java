package org.washwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Place;
import org.washwright.task.Vocabulary;
import org.washwright.taskfile.CsvCells;
import org.washwright.taskfile.CsvState;
import org.washwright.taskfile.TaskColumns;

/** One task a row of a table in comma-separated text (RFC 4180); the first row says what the columns hold. */
final class CsvSource implements RecordSource {

    private final ByteInput in;
    private final String name;
    private final long size;
    private final RecordBytes bytes = new RecordBytes();
    private final TaskColumns columns;
    private final String signature;
    private long records;
    private long lines = 1;

    CsvSource(InputStream in, String name, long size, Vocabulary vocabulary) throws IOException, BatchRefusal {
        this.in = new ByteInput(in);
        this.name = name;
        this.size = size;
        this.in.skipMark();
        Diagnostics diagnostics = new Diagnostics();
        InputRecord header = row(0).orElseGet(() -> InputRecord.of(0, 1, name, new byte[0]));
        header.unusable().forEach(diagnostics::add);
        List<String> names =
                diagnostics.hasErrors() ? List.of() : cells(header, diagnostics).orElse(List.of());
        this.columns = TaskColumns.read(names, place(header), vocabulary, diagnostics);
        this.signature = header.sha256();
        if (diagnostics.hasErrors()) {
            this.in.close();
            throw new BatchRefusal(diagnostics.all());
        }
    }

    @Override
    public Optional<InputRecord> next() throws IOException {
        Optional<InputRecord> row = row(records + 1);
        records += row.isPresent() ? 1 : 0;
        return row;
    }

    private Optional<InputRecord> row(long number) throws IOException {
        while (in.peek() != ByteInput.END) {
            long start = lines;
            cut();
            if (!bytes.isBlank()) {
                return Optional.of(bytes.take(number, start, name));
            }
            bytes.clear();
        }
        return Optional.empty();
    }

    /** Takes one row: a line end inside quotes is part of it. */
    private void cut() throws IOException {
        CsvState state = CsvState.START;
        for (int b = in.read(); b != ByteInput.END; b = in.read()) {
            lines += b == '\n' ? 1 : 0;
            if (b == '\n' && state != CsvState.QUOTED) {
                return;
            }
            boolean lineEnd = b == '\r' && state != CsvState.QUOTED && in.peek() == '\n';
            if (!lineEnd) {
                bytes.add(b);
                state = state.next(b);
            }
        }
    }

    @Override
    public Optional<byte[]> document(InputRecord record, Diagnostics diagnostics) {
        return cells(record, diagnostics).flatMap(cells -> columns.document(cells, place(record), diagnostics));
    }

    private static Optional<List<String>> cells(InputRecord row, Diagnostics diagnostics) {
        return DocumentReader.decode(row.key(), row.bytes(), diagnostics)
                .flatMap(text -> CsvCells.cut(text, place(row), diagnostics));
    }

    private static Place place(InputRecord row) {
        return new Place(row.key(), (int) row.line(), 0, "");
    }

    @Override
    public Diagnostic placed(Diagnostic found, InputRecord record) {
        Place p = found.place();
        // A document made from cells has no lines of its own; a pointer says which column it was.
        int column = p.pointer().isEmpty() ? p.column() : columnOf(p.pointer(), record);
        return found.at(new Place(record.key(), (int) record.line(), column, p.pointer()));
    }

    private int columnOf(String pointer, InputRecord record) {
        return columns.columnOf(pointer, cells(record, new Diagnostics()).orElse(List.of()));
    }

    @Override
    public double share() {
        return size <= 0 ? UNKNOWN : Math.min(1, in.position() / (double) size);
    }

    @Override
    public String signature() {
        return signature;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}

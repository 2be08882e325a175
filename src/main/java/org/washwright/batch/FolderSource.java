package org.washwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;

/** One task a file: every YAML and JSON file below a folder in order of their names, or one file alone. */
final class FolderSource implements RecordSource {

    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");

    private final Path folder;
    private final List<String> names;
    private volatile int taken;

    private FolderSource(Path folder, List<String> names) {
        this.folder = folder;
        this.names = names;
    }

    static FolderSource of(Path fileOrFolder) throws IOException {
        if (!Files.isDirectory(fileOrFolder)) {
            Path name = fileOrFolder.getFileName();
            return new FolderSource(fileOrFolder.resolveSibling(""), List.of(name.toString()));
        }
        try (Stream<Path> walk = Files.walk(fileOrFolder)) {
            return new FolderSource(
                    fileOrFolder,
                    walk.filter(p -> isTaskFile(p) && Files.isRegularFile(p))
                            .map(p -> fileOrFolder.relativize(p).toString().replace('\\', '/'))
                            .sorted()
                            .toList());
        } catch (java.io.UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** True for a file that holds one task, by its name. */
    static boolean isTaskFile(Path path) {
        String name =
                path.getFileName() == null ? "" : path.getFileName().toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && ENDINGS.stream().anyMatch(name::endsWith);
    }

    boolean isEmpty() {
        return names.isEmpty();
    }

    @Override
    public Optional<InputRecord> next() {
        if (taken == names.size()) {
            return Optional.empty();
        }
        String name = names.get(taken);
        int number = taken + 1;
        taken = number;
        Path file = folder.resolve(name);
        RecordBytes bytes = new RecordBytes();
        try (ByteInput in = new ByteInput(open(file))) {
            for (int b = in.read(); b != ByteInput.END; b = in.read()) {
                bytes.add(b);
            }
        } catch (IOException e) {
            // One file that can't be read is that record's fault; the others are answered.
            return Optional.of(InputRecord.unreadable(number, name, file));
        }
        return Optional.of(bytes.take(number, 0, name));
    }

    private static InputStream open(Path file) throws IOException {
        return Files.newInputStream(file);
    }

    @Override
    public Optional<byte[]> document(InputRecord record, Diagnostics diagnostics) {
        return Optional.of(record.bytes());
    }

    @Override
    public Diagnostic placed(Diagnostic found, InputRecord record) {
        Place p = found.place();
        return found.at(new Place(record.key(), p.line(), p.column(), p.pointer()));
    }

    @Override
    public double share() {
        return names.isEmpty() ? 1 : taken / (double) names.size();
    }

    @Override
    public String signature() {
        return "";
    }

    @Override
    public void close() {
        // Each file is closed as soon as it is read.
    }
}

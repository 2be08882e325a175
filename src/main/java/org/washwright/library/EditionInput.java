package org.washwright.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;

/** Reads an edition from a folder, a zip bundle, bytes, or out of the program itself. */
public final class EditionInput {

    /** Where the starter rulebook stands when nothing else is said. */
    public static final Path STARTER = Path.of("rules", "starter");

    private EditionInput() {}

    /**
     * An edition with the files it was read from.
     *
     * @param files its files, as far as they could be gathered
     * @param result what came of reading them
     */
    public record Opened(EditionFiles files, EditionReader.Result result) {}

    /** Reads a folder or zip bundle and keeps its files; without a path the starter rulebook. */
    public static Opened open(Optional<Path> path) {
        Diagnostics diagnostics = new Diagnostics();
        Path named = path.orElse(STARTER);
        try {
            EditionFiles files = path.isPresent() || Files.exists(STARTER)
                    ? files(named, diagnostics)
                    : PackedStarter.files(diagnostics);
            return new Opened(files, read(files, diagnostics));
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(named.toString()), named.toString());
            return new Opened(new EditionFiles(Map.of()), EditionReader.Result.failed(diagnostics));
        }
    }

    /** True when a path looks like an edition: a folder that holds one, or a zip bundle. */
    public static boolean isEdition(Path path) {
        return Files.isDirectory(path)
                ? Files.exists(path.resolve("edition.yaml"))
                : path.toString().toLowerCase(Locale.ROOT).endsWith(".zip") && Files.isRegularFile(path);
    }

    /** The raw files of a folder or zip bundle. */
    static EditionFiles files(Path path, Diagnostics diagnostics) throws IOException {
        return Files.isDirectory(path)
                ? EditionFiles.ofFolder(path, diagnostics)
                : EditionFiles.ofZip(Files.readAllBytes(path), diagnostics);
    }

    /** Reads and checks raw files. */
    static EditionReader.Result read(EditionFiles files, Diagnostics diagnostics) {
        return new EditionReader(new DrlReader()).read(files, diagnostics);
    }

    /** Reads and checks a folder or zip bundle. */
    public static EditionReader.Result read(Path path) {
        Diagnostics diagnostics = new Diagnostics();
        try {
            return read(files(path, diagnostics), diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(path.toString()), path.toString());
            return EditionReader.Result.failed(diagnostics);
        }
    }

    /** The starter rulebook below the working directory or, where there is none, the one that came with the program. */
    public static EditionReader.Result readStarter() {
        if (Files.exists(STARTER)) {
            return read(STARTER);
        }
        Diagnostics diagnostics = new Diagnostics();
        try {
            return read(PackedStarter.files(diagnostics), diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(STARTER.toString()), STARTER.toString());
            return EditionReader.Result.failed(diagnostics);
        }
    }
}

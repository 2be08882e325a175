package org.washwright.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

package org.washwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;

/** Reads an edition from a folder or a zip bundle. */
final class EditionInput {

    private EditionInput() {}

    static EditionReader.Result read(Path path) {
        Diagnostics diagnostics = new Diagnostics();
        try {
            EditionFiles files;
            if (Files.isDirectory(path)) {
                files = EditionFiles.ofFolder(path, diagnostics);
            } else {
                files = EditionFiles.ofZip(Files.readAllBytes(path), diagnostics);
            }
            return new EditionReader(new DrlReader()).read(files, diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(path.toString()), path.toString());
            return new EditionReader.Result(java.util.Optional.empty(), diagnostics);
        }
    }
}

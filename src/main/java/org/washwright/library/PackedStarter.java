package org.washwright.library;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;

/** The starter rulebook that the build packs into the program, so that a command answers from any folder. */
final class PackedStarter {

    private static final String FOLDER = "/rules/starter";
    private static final String ANCHOR = FOLDER + "/edition.yaml";

    private PackedStarter() {}

    static EditionFiles files(Diagnostics diagnostics) throws IOException {
        URL anchor = PackedStarter.class.getResource(ANCHOR);
        if (anchor == null) {
            throw new NoSuchFileException(ANCHOR);
        }
        String place = anchor.toString();
        if (!place.startsWith("jar:")) {
            return EditionFiles.ofFolder(path(place).getParent(), diagnostics);
        }
        Path jar = path(place.substring("jar:".length(), place.indexOf("!/")));
        try (FileSystem inside = FileSystems.newFileSystem(jar, (ClassLoader) null)) {
            return EditionFiles.ofFolder(inside.getPath(FOLDER), diagnostics);
        }
    }

    private static Path path(String url) throws IOException {
        try {
            return Path.of(new URI(url));
        } catch (URISyntaxException e) {
            throw new IOException("no place of a file: " + url, e);
        }
    }
}

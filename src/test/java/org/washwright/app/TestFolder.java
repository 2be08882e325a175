package org.washwright.app;

import java.nio.file.Path;

/** Folders below {@code target} that test classes running at the same time must not share. */
public final class TestFolder {
    private TestFolder() {}

    /** The folder of this name that belongs to this Java alone: the build numbers the ones it starts. */
    public static Path of(String name) {
        return Path.of("target", name + "-" + System.getProperty("washwright.fork", "1"))
                .toAbsolutePath();
    }
}

package org.washwright.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Finds the browser of the browser tests, or gets it where that is possible without asking. */
final class Chromium {
    private static final String SETTING = "washwright.chromium";
    private static final Path DEBIAN = Path.of("/usr/bin/chromium");

    private Chromium() {}

    static synchronized Path find() {
        Optional<Path> configured =
                Optional.ofNullable(System.getProperty(SETTING)).map(Path::of);
        if (configured.isPresent()) {
            return configured
                    .filter(Files::isExecutable)
                    .orElseThrow(() -> new IllegalStateException("The setting " + SETTING + " names " + configured.get()
                            + ", which is no program. Give the path of a Chromium."));
        }
        if (!Files.isExecutable(DEBIAN) && isRoot() && Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
            install();
        }
        if (Files.isExecutable(DEBIAN)) {
            return DEBIAN;
        }
        throw new IllegalStateException("The browser tests need Chromium and found none at " + DEBIAN
                + ". Install it ('apt-get install chromium' on Debian) or name another with -D" + SETTING + "=PATH.");
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static void install() {
        run("apt-get", "-qq", "update");
        run("apt-get", "-qq", "install", "-y", "--no-install-recommends", "chromium");
    }

    private static void run(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Process process = builder.start();
            if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IllegalStateException("'" + String.join(" ", List.of(command)) + "' failed; see its output.");
            }
        } catch (IOException e) {
            throw new IllegalStateException("'" + String.join(" ", command) + "' could not be run", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}

package org.washwright.fuzz;

import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;

/** Zip bundles. */
public final class BundleFuzz {

    private BundleFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(data, diagnostics);
        Promise.complete(diagnostics.all());
        long total = files.files().values().stream().mapToLong(b -> b.length).sum();
        Promise.holds(total <= EditionFiles.MAX_TOTAL, "more was unpacked than an edition may hold");
        Promise.holds(files.files().size() <= EditionFiles.MAX_FILES, "more files than an edition may hold");
        if (!diagnostics.hasErrors() && !files.files().isEmpty()) {
            Diagnostics again = new Diagnostics();
            EditionFiles same = EditionFiles.ofZip(files.toZip(), again);
            Promise.holds(again.all().isEmpty(), "a bundle of what was read is refused: " + again.all());
            Promise.holds(same.textHash().equals(files.textHash()), "a bundle of what was read holds something else");
        }
        Promise.edition(files, diagnostics);
    }
}

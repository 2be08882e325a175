package org.washwright.fuzz;

import org.washwright.exchange.OneFile;

/** Decision tables. */
public final class TableFuzz {

    private TableFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Promise.rules(diagnostics -> OneFile.table("tables/fuzz.csv", data, Promise.TERMS, diagnostics));
    }
}

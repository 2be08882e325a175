package org.washwright.fuzz;

/** Decision tables. */
public final class TableFuzz {

    private TableFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Promise.edition("tables/fuzz.csv", data);
    }
}

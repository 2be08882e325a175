package org.washwright.fuzz;

/** Rule text. */
public final class DrlFuzz {

    private DrlFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Promise.edition("rules/fuzz.drl", data);
    }
}

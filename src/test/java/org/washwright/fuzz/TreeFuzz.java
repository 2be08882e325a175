package org.washwright.fuzz;

/** Question trees. */
public final class TreeFuzz {

    private TreeFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Promise.tree(data);
    }
}

package org.washwright.fuzz;

import java.util.List;
import org.washwright.document.DocumentReader;
import org.washwright.drools.DrlReader;

/** Rule text. */
public final class DrlFuzz {

    private DrlFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Promise.rules(diagnostics -> DocumentReader.decode("rules/fuzz.drl", data, diagnostics)
                .map(text -> new DrlReader().read("rules/fuzz.drl", text, diagnostics))
                .orElse(List.of()));
    }
}

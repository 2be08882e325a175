package org.washwright.fuzz;

import java.util.Arrays;
import java.util.List;

/** The other files of an edition; the first byte says which. */
public final class CatalogueFuzz {

    /** Files by the letter that stands before their text. */
    static final List<String> FILES = List.of(
            "catalogue/fuzz.yaml",
            "edition.yaml",
            "grading.yaml",
            "assumptions.yaml",
            "catalogue/attributes.yaml",
            "catalogue/kinds.yaml",
            "catalogue/process-terms.yaml",
            "cases/fuzz.yaml");

    private CatalogueFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length > 0) {
            String file = FILES.get(Math.floorMod(data[0] - 'a', FILES.size()));
            Promise.edition(file, Arrays.copyOfRange(data, 1, data.length));
        }
    }
}

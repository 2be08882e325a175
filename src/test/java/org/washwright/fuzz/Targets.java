package org.washwright.fuzz;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/** All fuzz targets by the name of their folder of seeds. */
final class Targets {

    private static final Map<String, Consumer<byte[]>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("Drl", DrlFuzz::fuzzerTestOneInput);
        ALL.put("Table", TableFuzz::fuzzerTestOneInput);
        ALL.put("Tree", TreeFuzz::fuzzerTestOneInput);
        ALL.put("Catalogue", CatalogueFuzz::fuzzerTestOneInput);
        ALL.put("Bundle", BundleFuzz::fuzzerTestOneInput);
        ALL.put("Task", TaskFuzz::fuzzerTestOneInput);
        ALL.put("RoundTrip", RoundTripFuzz::fuzzerTestOneInput);
        ALL.put("Quantity", QuantityFuzz::fuzzerTestOneInput);
    }

    private Targets() {}

    static Map<String, Consumer<byte[]>> all() {
        return Map.copyOf(ALL);
    }
}

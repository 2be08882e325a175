package org.washwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;

/** Quantities and ranges; the first byte says of which dimension. */
public final class QuantityFuzz {

    private static final int DIGITS = 15;
    private static final double NEAR = 1e-12;

    private QuantityFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        Dimension[] all = Dimension.values();
        Dimension dimension = all[Math.floorMod(data[0] - 'A', all.length)];
        String text = new String(data, 1, data.length - 1, StandardCharsets.UTF_8);
        Diagnostics diagnostics = new Diagnostics();
        Place place = new Place("f", 1, 1, "");
        Optional<Span> span = Quantities.readSpan(text, dimension, place, diagnostics);
        Promise.complete(diagnostics.all());
        Promise.holds(span.isPresent() != diagnostics.hasErrors(), "a span is there exactly when there is no error");
        span.ifPresent(s -> {
            Promise.holds(!Quantities.write(s, dimension, DIGITS).isBlank(), "nothing is written");
            Promise.holds(!Quantities.write(s, dimension, 3).isBlank(), "nothing is written");
            if (s.isPoint() && s.low() != 0) {
                readsBack(s.low(), dimension);
            }
        });
    }

    private static void readsBack(double si, Dimension dimension) {
        String written = Quantities.write(si, dimension, DIGITS);
        Diagnostics diagnostics = new Diagnostics();
        Optional<Double> again = Quantities.read(written, dimension, new Place("f", 1, 1, ""), diagnostics);
        // Near the ends of what a quantity can be, rounding may lead out.
        Promise.holds(
                again.isEmpty()
                        || Math.abs(again.get() - si) <= NEAR * Math.max(Math.abs(si), 300)
                        || Math.abs(again.get() / si - 1) <= NEAR,
                si + " is written " + written + " and read " + again);
    }
}

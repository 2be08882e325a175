package org.washwright.exchange;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.washwright.document.Diagnostics;

/**
 * What was made of some text before, by a key that names the text. What no reading asked for lately goes, and what was not
 * asked for longest goes first when there is too much. Safe for several threads; two that ask for the same thing at once may both make it.
 *
 * @param <V> immutable
 */
final class Memory<V> {

    /** A thing and the last reading that asked for it; guarded by the memory. */
    private static final class Kept<V> {
        private final V value;
        private final Diagnostics found;
        private final long weight;
        private long used;

        private Kept(V value, Diagnostics found, long weight) {
            this.value = value;
            this.found = found;
            this.weight = weight;
        }
    }

    /** How many readings a thing is kept for without being asked for. */
    static final int LATELY = 32;

    private final long mostWeight;
    private final int most;
    private final LongSupplier reading;
    private final Map<String, Kept<V>> kept = new LinkedHashMap<>(16, 0.75f, true);
    private long weight;

    /**
     * A memory with an end.
     *
     * @param mostWeight most of all weights together
     * @param most most things
     */
    Memory(long mostWeight, int most) {
        this(mostWeight, most, () -> 0);
    }

    /**
     * A memory that also lets go what none of the last {@value #LATELY} readings asked for.
     *
     * @param reading number of the present reading, from 0 on
     */
    Memory(long mostWeight, int most, LongSupplier reading) {
        this.mostWeight = mostWeight;
        this.most = most;
        this.reading = reading;
    }

    /**
     * The thing with this key, and what was found while it was made.
     *
     * @param size weight of the thing; what alone is heavier than all may be is not kept
     * @param into takes what is found, now or then
     */
    V read(String key, long size, Diagnostics into, Function<Diagnostics, V> reader) {
        Kept<V> thing = find(key);
        if (thing == null) {
            Diagnostics own = new Diagnostics();
            thing = new Kept<>(reader.apply(own), own, size);
            keep(key, thing);
        }
        into.addAll(thing.found);
        return thing.value;
    }

    /** The same for a thing that finds nothing, or keeps what it finds itself. */
    V get(String key, long size, Supplier<V> maker) {
        return read(key, size, new Diagnostics(), none -> maker.get());
    }

    private synchronized Kept<V> find(String key) {
        Kept<V> found = kept.get(key);
        if (found != null) {
            found.used = reading.getAsLong();
        }
        return found;
    }

    private synchronized void keep(String key, Kept<V> thing) {
        if (thing.weight > mostWeight) {
            return;
        }
        thing.used = reading.getAsLong();
        Kept<V> old = kept.put(key, thing);
        weight += thing.weight - (old == null ? 0 : old.weight);
        var eldest = kept.values().iterator();
        while (eldest.hasNext()) {
            Kept<V> next = eldest.next();
            if (weight <= mostWeight && kept.size() <= most && next.used >= thing.used - LATELY) {
                return;
            }
            weight -= next.weight;
            eldest.remove();
        }
    }

    synchronized int size() {
        return kept.size();
    }
}

package org.washwright.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The last few things used, by key; what was not used longest goes first. */
public final class Recent<V> {
    private final Map<String, V> kept;

    /** Keeps the last so many. */
    public Recent(int most) {
        kept = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, V> eldest) {
                return size() > most;
            }
        };
    }

    /** The thing under a key, made when it is not there; making must be quick, as all others wait. */
    public synchronized V get(String key, Function<String, V> maker) {
        V found = kept.get(key);
        if (found == null) {
            found = maker.apply(key);
            kept.put(key, found);
        }
        return found;
    }

    /** The thing under a key, if it is still there. */
    public synchronized Optional<V> find(String key) {
        return Optional.ofNullable(kept.get(key));
    }

    /** Puts a thing in place of the one under its key. */
    public synchronized void put(String key, V value) {
        kept.put(key, value);
    }

    synchronized void remove(String key, V value) {
        kept.remove(key, value);
    }

    synchronized int size() {
        return kept.size();
    }
}

package org.washwright.engine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The facts of one evaluation, in fixed order. */
public record FactBase(Map<String, Fact> byId) {

    /** Keeps an ordered copy. */
    public FactBase {
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
    }

    /** These facts. */
    public static FactBase of(List<Fact> facts) {
        Map<String, Fact> map = new LinkedHashMap<>();
        facts.forEach(f -> map.put(f.id(), f));
        return new FactBase(map);
    }

    /** All facts. */
    public List<Fact> all() {
        return List.copyOf(byId.values());
    }

    /** The fact with this id. */
    public Optional<Fact> fact(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** These facts and more; later ones replace earlier ones of the same id. */
    public FactBase with(List<Fact> more) {
        Map<String, Fact> map = new LinkedHashMap<>(byId);
        more.forEach(f -> map.put(f.id(), f));
        return new FactBase(map);
    }
}

package org.washwright.drools;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.ref.ReferenceQueue;
import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.drools.model.Model;
import org.kie.api.KieServices;
import org.washwright.document.Hashes;

/**
 * Gives the loaded rules of a canonical text: from memory while any base still holds them, else from the store, else
 * compiled. Safe for use by several threads at once.
 */
public final class Units {

    /** Number of the form of stored units; it rises when what is stored changes. */
    private static final int FORM = 1;

    private static final String MAKER = maker();

    private final Optional<UnitStore> store;
    private final Map<String, Held> held = new HashMap<>();
    private final ReferenceQueue<Unit> dropped = new ReferenceQueue<>();
    private final AtomicLong compiled = new AtomicLong();

    /**
     * Rules loaded from one text. Whoever runs them has to hold this object: it is what keeps them in memory.
     *
     * @param name hash of the text and of what compiled it
     * @param models the rules
     */
    public record Unit(String name, List<Model> models) {
        /** Keeps a copy. */
        public Unit {
            models = List.copyOf(models);
        }
    }

    /** A unit that others may let go. */
    private static final class Held extends WeakReference<Unit> {
        private final String name;

        Held(Unit unit, ReferenceQueue<Unit> queue) {
            super(unit, queue);
            this.name = unit.name();
        }
    }

    /** Units kept in memory, and in a store when there is one. */
    Units(Optional<UnitStore> store) {
        this.store = store;
    }

    /** Units kept in the cache folder of the user who runs the program. */
    public static Units ofUser() {
        return new Units(
                UserCache.folder(System.getProperties(), System.getenv()).flatMap(UnitStore::in));
    }

    /** Units kept in this folder. */
    public static Units in(Path folder) {
        return new Units(UnitStore.in(folder));
    }

    /** The rules of a canonical text. */
    public Unit of(String drl) {
        String name = Hashes.sha256(MAKER + drl);
        Optional<Unit> known = known(name);
        if (known.isPresent()) {
            return known.get();
        }
        Optional<CompiledUnit> stored = store.flatMap(s -> s.load(name));
        CompiledUnit classes = stored.orElseGet(() -> {
            compiled.incrementAndGet();
            return UnitCompiler.compile(drl);
        });
        Unit unit = new Unit(name, load(classes));
        if (stored.isEmpty()) {
            store.ifPresent(s -> s.save(name, classes));
        }
        return keep(unit);
    }

    /** How many texts were compiled so far. */
    public long compiled() {
        return compiled.get();
    }

    /** How many units are in memory. */
    public synchronized int held() {
        forgetDropped();
        return held.size();
    }

    private synchronized Optional<Unit> known(String name) {
        forgetDropped();
        return Optional.ofNullable(held.get(name)).map(WeakReference::get);
    }

    private synchronized Unit keep(Unit unit) {
        // Of two threads that made the same unit, the later takes what the earlier one keeps.
        return Optional.ofNullable(held.get(unit.name()))
                .map(WeakReference::get)
                .orElseGet(() -> {
                    held.put(unit.name(), new Held(unit, dropped));
                    return unit;
                });
    }

    private void forgetDropped() {
        for (Object gone = dropped.poll(); gone != null; gone = dropped.poll()) {
            held.remove(((Held) gone).name, gone);
        }
    }

    private static List<Model> load(CompiledUnit unit) {
        Wall wall = new Wall(unit.classes());
        return unit.models().stream().map(name -> model(wall, name)).toList();
    }

    private static Model model(Wall wall, String name) {
        try {
            return (Model) wall.loadClass(name).getConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("compiled rules can't be loaded: " + name, e);
        }
    }

    /** What a compiled text depends on besides itself. */
    private static String maker() {
        MessageDigest digest = Hashes.digest();
        for (String part : List.of(
                String.valueOf(FORM),
                String.valueOf(KieServices.class.getPackage().getImplementationVersion()),
                String.valueOf(Runtime.version().feature()))) {
            digest.update(part.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
        }
        // Compiled rules call the first two, and the third makes them; a change of these must not meet rules compiled
        // before it.
        for (Class<?> known : List.of(MatchFact.class, MatchSink.class, UnitCompiler.class)) {
            try (InputStream in = known.getResourceAsStream(known.getSimpleName() + ".class")) {
                digest.update(in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}

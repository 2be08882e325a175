package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/** Rulebooks by name, begun when the first edition of that name comes. Called within a transaction. */
@ApplicationScoped
class Rulebooks {
    private final EditionStore store;
    private final Clock clock;

    Rulebooks(EditionStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    Rulebook of(UUID workspace, String name) {
        return store.rulebook(workspace, name).orElseGet(() -> {
            Rulebook made = new Rulebook(workspace, name, clock.instant().truncatedTo(ChronoUnit.MICROS));
            store.add(made);
            return made;
        });
    }
}

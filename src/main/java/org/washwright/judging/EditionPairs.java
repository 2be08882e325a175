package org.washwright.judging;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.exchange.EditionFiles;
import org.washwright.http.Slice;
import org.washwright.impact.meaning.State;
import org.washwright.problem.Conflict;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.Reading;

/** Which two editions are held against each other, and what they say. */
@ApplicationScoped
class EditionPairs {
    private static final String MOST = "200";

    private final Editions editions;

    EditionPairs(Editions editions) {
        this.editions = editions;
    }

    /** An edition and the one it is held against. */
    record Pair(EditionView before, EditionView after) {}

    /** What an edition can be held against: the last 200 others of its workspace, those of its rulebook first. */
    List<EditionView> choices(UUID workspace, EditionView edition) {
        return editions.list(workspace, Slice.of("0", MOST)).items().stream()
                .filter(e -> !e.id().equals(edition.id()))
                .sorted(Comparator.comparing((EditionView e) -> !e.rulebook().equals(edition.rulebook())))
                .toList();
    }

    /** What an edition is held against unless somebody says otherwise: what its rulebook released last, else what counts. */
    Optional<EditionView> usual(UUID workspace, EditionView edition) {
        return choices(workspace, edition).stream()
                .filter(EditionView::isReleased)
                .filter(e -> e.rulebook().equals(edition.rulebook()))
                .max(Comparator.comparing(e -> e.released().orElseThrow().at()))
                .or(() -> editions.current(workspace).filter(e -> !e.id().equals(edition.id())));
    }

    /** The pair asked for, or the usual one. */
    Optional<Pair> find(UUID workspace, UUID id, Optional<UUID> with) {
        EditionView after = editions.view(workspace, id);
        return with.map(other -> editions.view(workspace, other))
                .or(() -> usual(workspace, after))
                .map(before -> new Pair(before, after));
    }

    /** The same where there must be one. */
    Pair require(UUID workspace, UUID id, Optional<UUID> with) {
        return find(workspace, id, with)
                .orElseThrow(() -> new Conflict("There is no other edition yet that this one could be held against."));
    }

    /** What an edition says; refused when its files have errors. */
    State state(UUID workspace, EditionView edition) {
        editions.content(workspace, edition.id());
        Reading reading = editions.reading(workspace, edition.id());
        EditionFiles files = editions.files(workspace, edition.id());
        if (!files.textHash().equals(reading.textHash())) {
            throw new Conflict("The files are being changed just now; look at them again.");
        }
        return State.of(reading.edition().orElseThrow(), reading.checks().cases(), files.files());
    }
}

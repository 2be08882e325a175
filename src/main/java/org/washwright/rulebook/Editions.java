package org.washwright.rulebook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.washwright.assessment.Assessor;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Conflict;
import org.washwright.rule.Edition;

/** Editions as other features use them: which one counts, what it says, and its answers. */
@ApplicationScoped
public class Editions {
    private static final int READ = 8;

    private final EditionStore store;
    private final Compiler compiler;
    private final Recent<Reading> readings = new Recent<>(READ);
    private final Recent<Assessor> indexed = new Recent<>(READ);

    Editions(EditionStore store, Compiler compiler) {
        this.store = store;
        this.compiler = compiler;
    }

    /** The edition that counts in a workspace: the one released last. */
    @Transactional
    public Optional<EditionView> current(UUID workspace) {
        return store.current(workspace).map(StoredEdition::view);
    }

    /** The same where there must be one. */
    @Transactional
    public EditionView requireCurrent(UUID workspace) {
        return current(workspace)
                .orElseThrow(() -> new Conflict(
                        "This workspace has no released edition yet; have a draft reviewed and released first."));
    }

    /** An edition of a workspace. */
    @Transactional
    public EditionView view(UUID workspace, UUID id) {
        return store.get(workspace, id).view();
    }

    /** A part of the list of editions, changed last first. */
    @Transactional
    public Paged<EditionView> list(UUID workspace, Slice slice) {
        List<EditionView> views =
                store.list(workspace, slice).stream().map(StoredEdition::view).toList();
        return Paged.of(views, slice, store.count(workspace));
    }

    /** The content of an edition; refused when its files have errors. */
    public Edition content(UUID workspace, UUID id) {
        return reading(workspace, id)
                .edition()
                .orElseThrow(() -> new Conflict(
                        "The files of this edition have errors; mend them first, see its" + " diagnostics."));
    }

    /** The raw files of an edition. */
    @Transactional
    public EditionFiles files(UUID workspace, UUID id) {
        return store.files(store.get(workspace, id));
    }

    /** A released edition ready to answer. The first call after a start takes seconds, later ones nothing. */
    public Assessor assessor(UUID workspace, UUID id) {
        EditionView edition = view(workspace, id);
        if (!edition.isReleased()) {
            throw new Conflict("Only a released edition answers tasks; this one is a draft.");
        }
        return waited(ready(workspace, id));
    }

    /** An edition ready to answer many tasks one after the other; nothing is compiled, and answers are the same. */
    public Assessor indexed(UUID workspace, UUID id) {
        Edition content = content(workspace, id);
        return indexed.get(content.textHash(), hash -> Assessor.of(content, SweepInference.factory()));
    }

    Reading reading(UUID workspace, UUID id) {
        EditionView view = view(workspace, id);
        Optional<Reading> known = readings.find(view.textHash());
        if (known.isPresent()) {
            return known.get();
        }
        // The files are fetched before the cache is held: whoever waits for it may hold the last database connection.
        EditionFiles files = files(workspace, id);
        return readings.get(view.textHash(), hash -> Reading.of(files));
    }

    /** Starts making an edition ready. */
    CompletableFuture<Assessor> ready(UUID workspace, UUID id) {
        String hash = view(workspace, id).textHash();
        return compiler.ready(hash, () -> QuarkusTransaction.requiringNew().call(() -> content(workspace, id)));
    }

    private static Assessor waited(CompletableFuture<Assessor> coming) {
        try {
            return coming.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }
}

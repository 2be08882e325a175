package org.washwright.rulebook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import org.washwright.assessment.Assessor;
import org.washwright.document.Severity;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
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

    /** An edition of a workspace. A draft whose files were saved since they were counted is read first. */
    public EditionView view(UUID workspace, UUID id) {
        return counted(workspace, state(workspace, id));
    }

    /** A part of the list of editions, changed last first. */
    public Paged<EditionView> list(UUID workspace, Slice slice) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> {
                    List<State> states =
                            store.list(workspace, slice).stream().map(State::of).toList();
                    return Paged.of(states, slice, store.count(workspace));
                })
                .map(state -> counted(workspace, state));
    }

    /** An edition as stored, and whether its counts are those of its present files. */
    private record State(EditionView view, boolean counted) {
        static State of(StoredEdition edition) {
            return new State(edition.view(), edition.counted);
        }
    }

    private State state(UUID workspace, UUID id) {
        return QuarkusTransaction.joiningExisting().call(() -> State.of(store.get(workspace, id)));
    }

    private EditionView counted(UUID workspace, State state) {
        if (state.counted()) {
            return state.view();
        }
        UUID id = state.view().id();
        Reading reading = reading(workspace, id);
        return QuarkusTransaction.requiringNew().call(() -> {
            store.count(workspace, id, reading);
            return store.get(workspace, id).view();
        });
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
            throw new Conflict(
                    edition.isKept()
                            ? "This edition was withdrawn and answers no new tasks; what it answered before stays as it is."
                            : "Only a released edition answers tasks; this one is a draft.");
        }
        return waited(ready(workspace, id));
    }

    /** An edition ready to answer many tasks one after the other; nothing is compiled, and answers are the same. */
    public Assessor indexed(UUID workspace, UUID id) {
        Edition content = content(workspace, id);
        return indexed.get(content.textHash(), hash -> Assessor.of(content, SweepInference.factory()));
    }

    /** What came of reading the present files of an edition. */
    public Reading reading(UUID workspace, UUID id) {
        Optional<Reading> known = readings.find(state(workspace, id).view().textHash());
        if (known.isPresent()) {
            return known.get();
        }
        // The files are fetched before the cache is held: whoever waits for it may hold the last database connection.
        EditionFiles files = files(workspace, id);
        return readings.get(files.textHash(), hash -> Reading.of(files));
    }

    /** Refuses to go on with files that have errors. */
    void refuseErrors(UUID workspace, StoredEdition edition) {
        if (!edition.counted) {
            throw new Conflict("The files are being changed just now; look at them again.");
        }
        if (edition.errors > 0) {
            throw new Invalid(ProblemErrors.of(reading(workspace, edition.id).diagnostics().stream()
                    .filter(d -> d.severity() == Severity.ERROR)
                    .toList()));
        }
    }

    /**
     * What is readable of an edition if one of its files had these bytes, which are not kept. What did not change since the
     * last call is not read again.
     *
     * @param path name of the file, which need not exist
     */
    public EditionReader.Inspection readingWith(UUID workspace, UUID id, String path, byte[] bytes) {
        Map<String, byte[]> files = new TreeMap<>(files(workspace, id).files());
        files.put(path, bytes);
        return Reading.inspect(new EditionFiles(files));
    }

    /** What is readable of an edition as it is kept. */
    public EditionReader.Inspection inspection(UUID workspace, UUID id) {
        return Reading.inspect(files(workspace, id));
    }

    /** Starts making an edition ready. */
    CompletableFuture<Assessor> ready(UUID workspace, UUID id) {
        return ready(workspace, id, progress -> {});
    }

    /** The same, telling how far it is. */
    CompletableFuture<Assessor> ready(UUID workspace, UUID id, Consumer<String> progress) {
        String hash = state(workspace, id).view().textHash();
        return compiler.ready(
                hash, () -> QuarkusTransaction.requiringNew().call(() -> content(workspace, id)), progress);
    }

    private static Assessor waited(CompletableFuture<Assessor> coming) {
        try {
            return coming.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }
}

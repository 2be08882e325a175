package org.washwright.rulebook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import org.washwright.access.Person;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemErrors;

/**
 * The files of a draft one by one, as their authors write them. A file is stored as it is, with its errors: reading it is left
 * to whoever wants to know what it means. Whoever saves names the state of the file that was read; if that is not the present
 * one, the text is kept aside and nothing is overwritten.
 */
@ApplicationScoped
public class DraftFiles {
    private final EditionStore store;
    private final AsideStore asides;
    private final Rulebooks rulebooks;
    private final Clock clock;

    DraftFiles(EditionStore store, AsideStore asides, Rulebooks rulebooks, Clock clock) {
        this.store = store;
        this.asides = asides;
        this.rulebooks = rulebooks;
        this.clock = clock;
    }

    /** All files of an edition in order of their names. */
    @Transactional
    public List<KeptFile> list(UUID workspace, UUID edition) {
        return store.files(store.get(workspace, edition)).files().entrySet().stream()
                .map(e -> KeptFile.of(e.getKey(), e.getValue()))
                .toList();
    }

    /** One file of an edition. */
    @Transactional
    public KeptFile get(UUID workspace, UUID edition, String path) {
        return store.file(store.get(workspace, edition), path).orElseThrow(() -> NotFound.of("file", path));
    }

    /**
     * Stores a file.
     *
     * @param tag of the state that was read; empty for a file that is new
     * @throws FileChanged when that is not the present state; the bytes are kept aside
     */
    public Saved save(UUID workspace, Person by, UUID edition, String path, String tag, byte[] bytes) {
        check(path, bytes);
        return inOne(() -> {
            StoredEdition draft = held(workspace, edition);
            Optional<KeptFile> present = store.file(draft, path);
            String found = KeptFile.tagOf(bytes);
            if (present.map(KeptFile::tag).equals(Optional.of(found))) {
                // The same text again, for instance because the answer to the first time was lost: it is there.
                return Outcome.done(new Saved(path, found, draft.textHash, draft.version));
            }
            if (!present.map(KeptFile::tag).orElse("").equals(tag)) {
                return Outcome.refused(changed(draft, path, present, bytes, by));
            }
            Map<String, byte[]> files = new TreeMap<>(store.files(draft).files());
            files.put(path, bytes);
            EditionFiles all = new EditionFiles(files);
            check(all);
            if (present.isPresent() && wasRefused(draft, path, bytes)) {
                // Whoever sends a refused text again means it to stand in place of the other; that one is kept as well.
                asides.keep(draft, path, present.get().bytes(), "changed meanwhile", by, now());
            }
            store.putFile(draft, path, bytes);
            touch(draft, all, by);
            return Outcome.done(new Saved(path, found, draft.textHash, draft.version));
        });
    }

    /** Takes a file away; its text is kept aside. */
    public void delete(UUID workspace, Person by, UUID edition, String path, String tag) {
        inOne(() -> {
            StoredEdition draft = held(workspace, edition);
            KeptFile present = store.file(draft, path).orElseThrow(() -> NotFound.of("file", path));
            if (!present.tag().equals(tag)) {
                return Outcome.refused(new FileChanged(path, Optional.of(present), Optional.empty()));
            }
            asides.keep(draft, path, present.bytes(), "deleted", by, now());
            store.removeFile(draft, path);
            touch(draft, store.files(draft), by);
            return Outcome.done(path);
        });
    }

    /** Texts kept aside, the latest first. */
    @Transactional
    public List<KeptAside> aside(UUID workspace, UUID edition) {
        store.get(workspace, edition);
        return asides.of(workspace, edition);
    }

    /** One of them. */
    @Transactional
    public KeptAside aside(UUID workspace, UUID edition, UUID id) {
        return asides.get(workspace, edition, id);
    }

    /** Lets one of them go. */
    @Transactional
    public void dropAside(UUID workspace, UUID edition, UUID id) {
        asides.drop(workspace, edition, id);
    }

    /** What came of a step whose refusal has to be stored too: it is thrown only when the transaction is over. */
    private record Outcome<T>(Optional<T> result, Optional<FileChanged> refusal) {
        static <T> Outcome<T> done(T result) {
            return new Outcome<>(Optional.of(result), Optional.empty());
        }

        static <T> Outcome<T> refused(FileChanged refusal) {
            return new Outcome<>(Optional.empty(), Optional.of(refusal));
        }
    }

    private static <T> T inOne(Supplier<Outcome<T>> step) {
        Outcome<T> outcome = QuarkusTransaction.joiningExisting().call(step::get);
        if (outcome.refusal().isPresent()) {
            throw outcome.refusal().get();
        }
        return outcome.result().orElseThrow();
    }

    private boolean wasRefused(StoredEdition draft, String path, byte[] bytes) {
        return asides.of(draft.workspaceId, draft.id).stream()
                .anyMatch(kept -> kept.path().equals(path) && Arrays.equals(kept.bytes(), bytes));
    }

    private FileChanged changed(StoredEdition draft, String path, Optional<KeptFile> present, byte[] bytes, Person by) {
        UUID aside = asides.keep(draft, path, bytes, "changed meanwhile", by, now());
        return new FileChanged(path, present, Optional.of(aside));
    }

    private StoredEdition held(UUID workspace, UUID id) {
        StoredEdition edition = store.hold(workspace, id);
        if (edition.state.stands()) {
            throw new Conflict("This edition is released and never changes; begin a draft from it.");
        }
        return edition;
    }

    private void touch(StoredEdition draft, EditionFiles all, Person by) {
        draft.touch(all.textHash(), by, now());
        draft.rulebook = rulebooks.of(draft.workspaceId, Reading.name(all));
        store.wrote(draft, by.id());
        store.flush();
    }

    private static void check(String path, byte[] bytes) {
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles.checkFile(path, bytes.length, diagnostics);
        DocumentReader.decode(path, bytes, diagnostics);
        refuse(diagnostics);
    }

    private static void check(EditionFiles all) {
        Diagnostics diagnostics = new Diagnostics();
        all.checkWhole(diagnostics);
        refuse(diagnostics);
    }

    private static void refuse(Diagnostics diagnostics) {
        if (diagnostics.hasErrors()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}

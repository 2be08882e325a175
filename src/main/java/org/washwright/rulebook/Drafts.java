package org.washwright.rulebook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletionStage;
import org.eclipse.microprofile.context.ManagedExecutor;
import org.washwright.access.Person;
import org.washwright.document.Diagnostics;
import org.washwright.document.Severity;
import org.washwright.exchange.EditionFiles;
import org.washwright.http.Tags;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.problem.Refused;

/** The way of an edition: uploaded, mended, asked for review, released by somebody else. */
@ApplicationScoped
class Drafts {
    static final int NOTE_LENGTH = 2000;

    private final EditionStore store;
    private final Editions editions;
    private final Clock clock;
    private final ManagedExecutor executor;

    Drafts(EditionStore store, Editions editions, Clock clock, ManagedExecutor executor) {
        this.store = store;
        this.editions = editions;
        this.clock = clock;
        this.executor = executor;
    }

    /**
     * The files of a bundle. A bundle that can't be kept file by file as it is (unreadable, a name that leads elsewhere, a
     * file that belongs to no edition) is refused whole; errors inside the files are no reason to refuse it.
     */
    static EditionFiles unpacked(byte[] zip) {
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(zip, diagnostics);
        if (diagnostics.hasErrors()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        if (files.files().isEmpty()) {
            throw new Invalid(List.of(ProblemError.at(
                    "",
                    "",
                    "The bundle holds no file of an edition.",
                    "Put edition.yaml and its folders in.",
                    "empty-bundle")));
        }
        return files;
    }

    @Transactional
    EditionView upload(UUID workspace, Person by, EditionFiles files) {
        return stored(workspace, by, files).view();
    }

    /** Stores files as a draft. */
    StoredEdition stored(UUID workspace, Person by, EditionFiles files) {
        Reading reading = Reading.of(files);
        StoredEdition draft = new StoredEdition(workspace, rulebook(workspace, reading.name()), by, now());
        draft.starter = by.equals(Person.PROGRAM);
        draft.hold(reading, by, now());
        store.add(draft);
        store.setFiles(draft, files);
        return draft;
    }

    @Transactional
    EditionView replace(UUID workspace, Person by, UUID id, int expected, EditionFiles files) {
        StoredEdition draft = held(workspace, id, expected);
        Reading reading = Reading.of(files);
        draft.rulebook = rulebook(workspace, reading.name());
        draft.hold(reading, by, now());
        store.setFiles(draft, files);
        store.flush();
        return draft.view();
    }

    @Transactional
    EditionView ask(UUID workspace, Person by, UUID id, int expected, String note) {
        checkNote(note);
        StoredEdition draft = held(workspace, id, expected);
        if (draft.state != EditionState.DRAFT) {
            throw new Conflict("A review is asked for already.");
        }
        refuseErrors(workspace, draft);
        draft.ask(by, note.strip(), now());
        store.flush();
        return draft.view();
    }

    /**
     * Releases an edition: it is made ready to answer first, away from the caller's thread; only when that worked one
     * transaction gives it its number. What changed meanwhile is checked again then.
     */
    CompletionStage<EditionView> release(UUID workspace, Person by, UUID id, int expected, String note) {
        checkNote(note);
        String hash = QuarkusTransaction.requiringNew().call(() -> {
            StoredEdition edition = held(workspace, id, expected);
            checkRelease(workspace, edition, by);
            return edition.textHash;
        });
        return editions.ready(workspace, id)
                .thenApplyAsync(
                        assessor -> QuarkusTransaction.requiringNew().call(() -> {
                            StoredEdition edition = held(workspace, id, expected);
                            checkRelease(workspace, edition, by);
                            if (!edition.textHash.equals(hash)) {
                                throw new Conflict("The files changed while they were made ready; look at them again.");
                            }
                            number(edition, by, note.strip());
                            return edition.view();
                        }),
                        executor);
    }

    /** Gives an edition its number; the caller holds its row. */
    void number(StoredEdition edition, Person by, String note) {
        edition.release(store.nextNumber(edition.rulebook), by, note, now());
        store.flush();
    }

    private void checkRelease(UUID workspace, StoredEdition edition, Person by) {
        if (edition.state != EditionState.ASKED) {
            throw new Conflict("Nobody has asked for a review of this draft yet; its author does that first.");
        }
        if (edition.writtenBy(by.id())) {
            throw new Refused("Nobody releases what they wrote: another reviewer has to look at it.");
        }
        refuseErrors(workspace, edition);
    }

    private void refuseErrors(UUID workspace, StoredEdition edition) {
        if (edition.errors > 0) {
            throw new Invalid(ProblemErrors.of(editions.reading(workspace, edition.id).diagnostics().stream()
                    .filter(d -> d.severity() == Severity.ERROR)
                    .toList()));
        }
    }

    private StoredEdition held(UUID workspace, UUID id, int expected) {
        StoredEdition edition = store.hold(workspace, id);
        if (edition.state == EditionState.RELEASED) {
            throw new Conflict("This edition is released and never changes; upload its successor as a new draft.");
        }
        Tags.check(expected, edition.version);
        return edition;
    }

    private Rulebook rulebook(UUID workspace, String name) {
        return store.rulebook(workspace, name).orElseGet(() -> {
            Rulebook made = new Rulebook(workspace, name, now());
            store.add(made);
            return made;
        });
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    private static void checkNote(String note) {
        if (note.length() > NOTE_LENGTH) {
            throw new Invalid(List.of(ProblemError.at(
                    "/note",
                    note.substring(0, 40) + "…",
                    "The note is longer than " + NOTE_LENGTH + " characters.",
                    "Shorten it.",
                    "text-too-long")));
        }
    }
}

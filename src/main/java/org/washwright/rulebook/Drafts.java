package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;
import org.washwright.http.Tags;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;

/** Drafts as a whole: brought in, begun from an edition or from nothing, given other files. */
@ApplicationScoped
public class Drafts {
    private final EditionStore store;
    private final Rulebooks rulebooks;
    private final Clock clock;

    Drafts(EditionStore store, Rulebooks rulebooks, Clock clock) {
        this.store = store;
        this.rulebooks = rulebooks;
        this.clock = clock;
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

    /** Begins a draft with the files of an edition of any state. */
    @Transactional
    public EditionView begin(UUID workspace, Person by, UUID from) {
        StoredEdition before = store.get(workspace, from);
        StoredEdition draft = stored(workspace, by, store.files(before));
        draft.basedOn = before.id;
        store.flush();
        return draft.view();
    }

    /** Begins a rulebook of its own with the words of an edition, and with its rules if they are wanted. */
    @Transactional
    EditionView begin(UUID workspace, Person by, UUID from, OwnRulebook own) {
        StoredEdition before = store.get(workspace, from);
        StoredEdition draft = stored(workspace, by, own.files(store.files(before)));
        draft.basedOn = before.id;
        store.flush();
        return draft.view();
    }

    /** Stores files as a draft. */
    StoredEdition stored(UUID workspace, Person by, EditionFiles files) {
        Reading reading = Reading.of(files);
        StoredEdition draft = new StoredEdition(workspace, rulebooks.of(workspace, reading.name()), by, now());
        draft.starter = by.equals(Person.PROGRAM);
        draft.hold(reading, by, now());
        store.add(draft);
        store.setFiles(draft, files);
        store.wrote(draft, by.id());
        return draft;
    }

    @Transactional
    EditionView replace(UUID workspace, Person by, UUID id, int expected, EditionFiles files) {
        StoredEdition draft = store.hold(workspace, id);
        if (draft.state.stands()) {
            throw new Conflict("This edition is released and never changes; begin a draft from it.");
        }
        Tags.check(expected, draft.version);
        Reading reading = Reading.of(files);
        draft.rulebook = rulebooks.of(workspace, reading.name());
        draft.hold(reading, by, now());
        store.setFiles(draft, files);
        store.wrote(draft, by.id());
        store.flush();
        return draft.view();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}

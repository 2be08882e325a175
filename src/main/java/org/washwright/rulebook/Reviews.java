package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.http.Tags;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.Refused;

/** The way of a draft between its author and a second pair of eyes, and of a release that turned out wrong. */
@ApplicationScoped
class Reviews {
    /** Most characters of a note. */
    static final int NOTE_LENGTH = 2000;

    private final EditionStore store;
    private final Editions editions;
    private final Clock clock;

    Reviews(EditionStore store, Editions editions, Clock clock) {
        this.store = store;
        this.editions = editions;
        this.clock = clock;
    }

    @Transactional
    EditionView ask(UUID workspace, Person by, UUID id, int expected, String note) {
        checkNote(note);
        editions.view(workspace, id);
        StoredEdition draft = held(workspace, id, expected);
        if (draft.state != EditionState.DRAFT) {
            throw new Conflict("A review is asked for already.");
        }
        editions.refuseErrors(workspace, draft);
        draft.ask(by, note.strip(), now());
        store.flush();
        return draft.view();
    }

    /** Says that the files as they are now may be released. */
    @Transactional
    EditionView approve(UUID workspace, Person by, UUID id, int expected, String note) {
        checkSaid(note, "Nothing is said of what was checked.", "Write in a sentence or two what you looked at.");
        StoredEdition edition = asked(workspace, id, expected);
        if (store.writtenBy(edition, by.id())) {
            throw new Refused("Nobody approves what they wrote: another reviewer has to look at it.");
        }
        edition.approve(by, note.strip(), now());
        store.flush();
        return edition.view();
    }

    /** Gives a draft back to its authors; what is missing stands in the remarks. */
    @Transactional
    EditionView giveBack(UUID workspace, UUID id, int expected) {
        StoredEdition edition = asked(workspace, id, expected);
        edition.giveBack();
        store.flush();
        return edition.view();
    }

    /** Takes a released edition out of use. It stays readable, and so does every answer that it gave. */
    @Transactional
    EditionView withdraw(UUID workspace, Person by, UUID id, int expected, String reason) {
        checkSaid(reason, "No reason is given.", "Write what is wrong with it; readers of its answers will see it.");
        StoredEdition edition = store.hold(workspace, id);
        Tags.check(expected, edition.version);
        if (edition.state != EditionState.RELEASED) {
            throw new Conflict(
                    edition.state == EditionState.WITHDRAWN
                            ? "This edition is withdrawn already."
                            : "Only a released edition can be withdrawn; a draft is simply changed.");
        }
        edition.withdraw(by, reason.strip(), now());
        store.flush();
        return edition.view();
    }

    /** Whether an account ever gave an edition a file. */
    @Transactional
    boolean wrote(UUID workspace, UUID id, UUID account) {
        return store.writtenBy(store.get(workspace, id), account);
    }

    private StoredEdition asked(UUID workspace, UUID id, int expected) {
        StoredEdition edition = held(workspace, id, expected);
        if (edition.state != EditionState.ASKED) {
            throw new Conflict("Nobody has asked for a review of this draft yet; its author does that first.");
        }
        return edition;
    }

    private StoredEdition held(UUID workspace, UUID id, int expected) {
        StoredEdition edition = store.hold(workspace, id);
        if (edition.state.stands()) {
            throw new Conflict("This edition is released and never changes; begin a draft from it.");
        }
        Tags.check(expected, edition.version);
        return edition;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    private static void checkSaid(String text, String missing, String advice) {
        if (text.isBlank()) {
            throw new Invalid(List.of(ProblemError.at("/note", "", missing, advice, "missing-field")));
        }
        checkNote(text);
    }

    static void checkNote(String note) {
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

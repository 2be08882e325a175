package org.washwright.rulebook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.eclipse.microprofile.context.ManagedExecutor;
import org.washwright.access.Person;
import org.washwright.cases.CaseResult;
import org.washwright.http.Tags;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.Refused;

/**
 * Releases editions, away from the caller's thread and step by step. Nothing is stored before one transaction gives the number,
 * so that a release that ends anywhere leaves either the draft as it was or the whole released edition.
 */
@ApplicationScoped
class Releases {
    private static final int KEPT = 64;

    private final EditionStore store;
    private final Editions editions;
    private final Checkings checkings;
    private final Gate gate;
    private final ReleaseHalt halt;
    private final Clock clock;
    private final ManagedExecutor executor;
    private final Recent<ReleaseWork> works = new Recent<>(KEPT);

    Releases(
            EditionStore store,
            Editions editions,
            Checkings checkings,
            Gate gate,
            ReleaseHalt halt,
            Clock clock,
            ManagedExecutor executor) {
        this.store = store;
        this.editions = editions;
        this.checkings = checkings;
        this.gate = gate;
        this.halt = halt;
        this.clock = clock;
        this.executor = executor;
    }

    /**
     * What whoever releases says.
     *
     * @param note what was looked at
     * @param despite why it is released though something is left open; empty when nothing is
     */
    record Word(String note, String despite) {
        Word {
            note = note.strip();
            despite = despite.strip();
        }
    }

    /** Begins a release; what is plainly not possible is refused at once, the rest is found out on other threads. */
    CompletableFuture<EditionView> release(UUID workspace, Person by, UUID id, int expected, Word word) {
        Reviews.checkNote(word.note());
        Reviews.checkNote(word.despite());
        editions.view(workspace, id);
        String hash = QuarkusTransaction.requiringNew().call(() -> releasable(workspace, by, id, expected).textHash);
        ReleaseWork work = new ReleaseWork();
        works.put(key(workspace, id), work);
        done(work, ReleaseStep.CHECKED);
        return CompletableFuture.supplyAsync(() -> casesRun(workspace, id, work), executor)
                .thenApplyAsync(ran -> lookedAt(workspace, id, word, work), executor)
                .thenCompose(looked -> editions.ready(workspace, id, work::say))
                .thenApplyAsync(
                        ready -> {
                            done(work, ReleaseStep.COMPILED);
                            EditionView released = QuarkusTransaction.requiringNew()
                                    .call(() -> numbered(releasable(workspace, by, id, expected), hash, by, word));
                            done(work, ReleaseStep.NUMBERED);
                            done(work, ReleaseStep.LIVE);
                            return released;
                        },
                        executor)
                .whenComplete((released, failure) -> {
                    if (failure != null) {
                        work.refused(cause(failure));
                    }
                });
    }

    /** The last release of an edition that was begun since the start of the program. */
    Optional<ReleaseWork> work(UUID workspace, UUID id) {
        return works.find(key(workspace, id));
    }

    private boolean casesRun(UUID workspace, UUID id, ReleaseWork work) {
        List<CaseResult> results = checkings.results(workspace, id).orElseGet(() -> checkings.run(workspace, id));
        List<ProblemError> failing = results.stream()
                .filter(result -> !result.holds())
                .map(Releases::error)
                .toList();
        if (!failing.isEmpty()) {
            throw new Invalid(failing);
        }
        done(work, ReleaseStep.CASES_RUN);
        return true;
    }

    private static ProblemError error(CaseResult result) {
        return ProblemError.at(
                result.reference().id(),
                "",
                "The reference case “" + result.reference().title() + "” fails.",
                "Mend the rules, or the case if the trade holds otherwise.",
                "case-fails");
    }

    private boolean lookedAt(UUID workspace, UUID id, Word word, ReleaseWork work) {
        List<GateItem> items = gate.of(workspace, id);
        List<ProblemError> blocked = items.stream()
                .filter(item -> item.mark() == GateItem.Mark.BLOCKED)
                .map(item -> ProblemError.at(item.id(), "", item.detail(), "Mend that first.", "gate-blocked"))
                .toList();
        if (!blocked.isEmpty()) {
            throw new Invalid(blocked);
        }
        List<GateItem> open = Gate.toAnswerFor(items);
        if (!open.isEmpty() && word.despite().isEmpty()) {
            throw new Invalid(open.stream()
                    .map(item -> ProblemError.at(
                            item.id(),
                            "",
                            item.title() + ": " + item.detail(),
                            "See to it, or say in “despite” why it is released all the same.",
                            "gate-open"))
                    .toList());
        }
        done(work, ReleaseStep.LOOKED_AT);
        return true;
    }

    private EditionView numbered(StoredEdition edition, String hash, Person by, Word word) {
        if (!edition.textHash.equals(hash)) {
            throw new Conflict("The files changed while they were made ready; look at them again.");
        }
        number(edition, by, word);
        return edition.view();
    }

    /** Gives an edition its number; the caller holds its row. */
    void number(StoredEdition edition, Person by, Word word) {
        if (edition.approvedHash == null && !edition.starter) {
            edition.approve(by, word.note(), now());
        }
        edition.release(store.nextNumber(edition.rulebook), by, word.note(), word.despite(), now());
        store.flush();
    }

    private StoredEdition releasable(UUID workspace, Person by, UUID id, int expected) {
        StoredEdition edition = store.hold(workspace, id);
        if (edition.state.stands()) {
            throw new Conflict("This edition is released and never changes; begin a draft from it.");
        }
        Tags.check(expected, edition.version);
        if (edition.state != EditionState.ASKED) {
            throw new Conflict("Nobody has asked for a review of this draft yet; its author does that first.");
        }
        if (store.writtenBy(edition, by.id())) {
            throw new Refused("Nobody releases what they wrote: another reviewer has to look at it.");
        }
        editions.refuseErrors(workspace, edition);
        return edition;
    }

    private void done(ReleaseWork work, ReleaseStep step) {
        work.done(step);
        halt.after(step);
    }

    private static RuntimeException cause(Throwable failure) {
        Throwable cause = failure instanceof CompletionException ? failure.getCause() : failure;
        return cause instanceof RuntimeException e ? e : new IllegalStateException(cause);
    }

    private static String key(UUID workspace, UUID id) {
        return workspace + " " + id;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}

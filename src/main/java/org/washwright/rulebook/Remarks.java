package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.http.Tags;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemError;

/** What authors and reviewers say to each other about a draft. Every look-up names the workspace. */
@ApplicationScoped
class Remarks {
    /** Most characters of a remark. */
    static final int MOST_SAID = 4000;

    private static final int MOST_RULE = 200;

    private final EntityManager rows;
    private final EditionStore editions;
    private final Clock clock;

    Remarks(EntityManager rows, EditionStore editions, Clock clock) {
        this.rows = rows;
        this.editions = editions;
        this.clock = clock;
    }

    /** All of an edition, open ones first, in the order said. */
    @Transactional
    List<RemarkView> of(UUID workspace, UUID edition) {
        editions.get(workspace, edition);
        return rows.createQuery(
                        "from StoredRemark where workspaceId = :workspace and editionId = :edition"
                                + " order by case when settledAt is null then 0 else 1 end, saidAt, id",
                        StoredRemark.class)
                .setParameter("workspace", workspace)
                .setParameter("edition", edition)
                .getResultStream()
                .map(StoredRemark::view)
                .toList();
    }

    /** How many wait for somebody. */
    @Transactional
    long open(UUID workspace, UUID edition) {
        return rows.createQuery(
                        "select count(*) from StoredRemark"
                                + " where workspaceId = :workspace and editionId = :edition and settledAt is null",
                        Long.class)
                .setParameter("workspace", workspace)
                .setParameter("edition", edition)
                .getSingleResult();
    }

    @Transactional
    RemarkView add(UUID workspace, UUID id, String rule, String said, Person by) {
        check(rule, said);
        StoredEdition edition = editions.get(workspace, id);
        if (edition.state.stands()) {
            throw new Conflict("This edition is released; remarks are made on drafts. Mark a wrong reason instead.");
        }
        StoredRemark made = new StoredRemark(edition, rule, said.strip(), by, now());
        rows.persist(made);
        rows.flush();
        return made.view();
    }

    /** Settles a remark: what it asked for was done, or was answered. */
    @Transactional
    RemarkView settle(UUID workspace, UUID edition, UUID id, int expected, String note, Person by) {
        Reviews.checkNote(note);
        StoredRemark remark = rows.createQuery(
                        "from StoredRemark where workspaceId = :workspace and editionId = :edition and id = :id",
                        StoredRemark.class)
                .setParameter("workspace", workspace)
                .setParameter("edition", edition)
                .setParameter("id", id)
                .setLockMode(LockModeType.PESSIMISTIC_WRITE)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of("remark", id));
        Tags.check(expected, remark.version);
        if (remark.settledAt != null) {
            throw new Conflict("This remark is settled already.");
        }
        remark.settle(by, note.strip(), now());
        rows.flush();
        return remark.view();
    }

    private static void check(String rule, String said) {
        List<ProblemError> errors = new ArrayList<>();
        if (said.isBlank()) {
            errors.add(ProblemError.at(
                    "/text", "", "Nothing is said.", "Write what should change and why.", "missing-field"));
        }
        if (said.length() > MOST_SAID) {
            errors.add(ProblemError.at(
                    "/text",
                    said.substring(0, 40) + "…",
                    "The remark is longer than " + MOST_SAID + " characters.",
                    "Shorten it.",
                    "text-too-long"));
        }
        if (rule.length() > MOST_RULE) {
            errors.add(ProblemError.at(
                    "/rule",
                    rule.substring(0, 40) + "…",
                    "No rule has so long an id.",
                    "Name the rule by its id.",
                    "text-too-long"));
        }
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}

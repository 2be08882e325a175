package org.washwright.judging;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.http.Tags;
import org.washwright.impact.replay.Impact;
import org.washwright.problem.NotFound;

/** Where runs and judgements are kept. Every look-up names the workspace; both belong to two states of files, by hash. */
@ApplicationScoped
class Runs {
    private final EntityManager store;
    private final Clock clock;

    Runs(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The date for which law is read. */
    String today() {
        return java.time.LocalDate.now(clock).toString();
    }

    @Transactional
    void add(UUID workspace, UUID edition, UUID before, Impact impact, Person by) {
        store.persist(new StoredRun(workspace, edition, before, impact, by, now()));
    }

    /** The last run of these two states. */
    @Transactional
    Optional<KeptRun> latest(UUID workspace, String beforeHash, String afterHash) {
        return store.createQuery(
                        "from StoredRun where workspaceId = :workspace and afterHash = :after and beforeHash = :before"
                                + " order by madeAt desc, id",
                        StoredRun.class)
                .setParameter("workspace", workspace)
                .setParameter("after", afterHash)
                .setParameter("before", beforeHash)
                .setMaxResults(1)
                .getResultStream()
                .findFirst()
                .map(StoredRun::view);
    }

    /** What was judged of two states, by the key of the task. */
    @Transactional
    Map<String, Judgement> judged(UUID workspace, Impact impact) {
        Map<String, Judgement> out = new TreeMap<>();
        of(workspace, impact, LockModeType.NONE).forEach(j -> out.put(j.taskKey, j.view()));
        return out;
    }

    private List<StoredJudgement> of(UUID workspace, Impact impact, LockModeType lock) {
        return store.createQuery(
                        "from StoredJudgement where workspaceId = :workspace and afterHash = :after"
                                + " and beforeHash = :before",
                        StoredJudgement.class)
                .setParameter("workspace", workspace)
                .setParameter("after", impact.after().textHash())
                .setParameter("before", impact.before().textHash())
                .setLockMode(lock)
                .getResultList();
    }

    /**
     * Keeps what somebody makes of a changed answer.
     *
     * @param expected version of the judgement that was read; 0 when there was none
     */
    @Transactional
    Judgement judge(UUID workspace, Impact impact, String key, int expected, Verdict verdict, String note, Person by) {
        Impact.AnswerChange change = impact.changed().stream()
                .filter(c -> c.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotFound("No answer to a task \"" + key + "\" changes between these editions."));
        Optional<StoredJudgement> known = of(workspace, impact, LockModeType.PESSIMISTIC_WRITE).stream()
                .filter(j -> j.taskKey.equals(key))
                .findFirst();
        Tags.check(expected, known.map(j -> j.version).orElse(0));
        StoredJudgement judgement = known.orElseGet(() -> new StoredJudgement(workspace, impact, change));
        judgement.say(verdict, note, by, now());
        if (known.isEmpty()) {
            // The first version is 1: 0 says that there is none yet.
            judgement.version = 1;
            store.persist(judgement);
        }
        store.flush();
        return judgement.view();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}

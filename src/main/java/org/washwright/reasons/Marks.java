package org.washwright.reasons;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.mark.Objection;
import org.washwright.http.Tags;
import org.washwright.problem.NotFound;
import org.washwright.rulebook.RuleMarks;

/** Where marks on reasons are kept. Every look-up names the workspace. */
@ApplicationScoped
class Marks implements RuleMarks {
    private static final int MOST = 500;

    private final EntityManager store;
    private final Clock clock;

    Marks(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Transactional
    MarkView add(UUID workspace, KeptAnswer kept, Objection objection, Person by) {
        StoredMark made = new StoredMark(workspace, kept, objection, by, now());
        store.persist(made);
        store.flush();
        return made.view();
    }

    /** Marks of a workspace, open ones first and the latest first of these; at most 500. */
    @Transactional
    List<MarkView> list(UUID workspace) {
        return store.createQuery(
                        "from StoredMark where workspaceId = :workspace"
                                + " order by case state when 'open' then 0 else 1 end, createdAt desc, id",
                        StoredMark.class)
                .setParameter("workspace", workspace)
                .setMaxResults(MOST)
                .getResultStream()
                .map(StoredMark::view)
                .toList();
    }

    /** Marks of one answer, the first one first. */
    @Transactional
    List<MarkView> of(UUID workspace, UUID assessment) {
        return store.createQuery(
                        "from StoredMark where workspaceId = :workspace and assessmentId = :assessment"
                                + " order by createdAt, id",
                        StoredMark.class)
                .setParameter("workspace", workspace)
                .setParameter("assessment", assessment)
                .getResultStream()
                .map(StoredMark::view)
                .toList();
    }

    @Transactional
    MarkView view(UUID workspace, UUID id) {
        return get(workspace, id, LockModeType.NONE).view();
    }

    @Transactional
    MarkView settle(UUID workspace, UUID id, int expected, MarkState state, String reply, Person by) {
        StoredMark mark = get(workspace, id, LockModeType.PESSIMISTIC_WRITE);
        Tags.check(expected, mark.version);
        mark.settle(state, reply, by, now());
        store.flush();
        return mark.view();
    }

    @Override
    @Transactional
    public Map<String, Integer> openByRule(UUID workspace) {
        Map<String, Integer> out = new TreeMap<>();
        store.createQuery("from StoredMark where workspaceId = :workspace and state = 'open'", StoredMark.class)
                .setParameter("workspace", workspace)
                .getResultStream()
                .flatMap(m -> m.ruleIds().stream())
                .forEach(rule -> out.merge(rule, 1, Integer::sum));
        return out;
    }

    private StoredMark get(UUID workspace, UUID id, LockModeType lock) {
        return store.createQuery("from StoredMark where workspaceId = :workspace and id = :id", StoredMark.class)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .setLockMode(lock)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of("mark", id));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}

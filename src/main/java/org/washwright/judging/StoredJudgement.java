package org.washwright.judging;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.impact.replay.Impact;

/** Whether a changed answer was meant, as it is kept. */
@Entity
@Table(name = "impact_judgement")
class StoredJudgement {
    @Id
    UUID id;

    UUID workspaceId;
    String afterHash;
    String beforeHash;
    String taskKey;
    String taskTitle;
    String verdict;
    String note;
    UUID judgedBy;
    String judgedByName;
    Instant judgedAt;

    @Version
    int version;

    StoredJudgement() {}

    StoredJudgement(UUID workspaceId, Impact impact, Impact.AnswerChange change) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.afterHash = impact.after().textHash();
        this.beforeHash = impact.before().textHash();
        this.taskKey = change.key();
        this.taskTitle = change.title();
    }

    void say(Verdict said, String words, Person by, Instant now) {
        verdict = said.word();
        note = words;
        judgedBy = by.id();
        judgedByName = by.name();
        judgedAt = now;
    }

    Judgement view() {
        return new Judgement(taskKey, taskTitle, verdict, note, judgedByName, judgedAt.toString(), version);
    }
}

package org.washwright.rulebook;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;

/** Something said of a rule of a draft, or of the whole of it, and what became of it. */
@Entity
@Table(name = "remark")
class StoredRemark {
    @Id
    UUID id;

    UUID workspaceId;
    UUID editionId;
    String rule;
    String said;
    UUID saidBy;
    String saidByName;
    Instant saidAt;
    UUID settledBy;
    String settledByName;
    Instant settledAt;
    String settledNote;

    @Version
    int version;

    StoredRemark() {}

    StoredRemark(StoredEdition edition, String rule, String said, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = edition.workspaceId;
        this.editionId = edition.id;
        this.rule = rule;
        this.said = said;
        this.saidBy = by.id();
        this.saidByName = by.name();
        this.saidAt = now;
    }

    void settle(Person by, String note, Instant now) {
        settledBy = by.id();
        settledByName = by.name();
        settledAt = now;
        settledNote = note;
    }

    RemarkView view() {
        return new RemarkView(
                id,
                rule,
                said,
                new EditionView.Act(saidByName, saidAt.toString(), Optional.empty()),
                settledAt == null
                        ? Optional.empty()
                        : Optional.of(new EditionView.Act(
                                settledByName, settledAt.toString(), Optional.ofNullable(settledNote))),
                version);
    }
}

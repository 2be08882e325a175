package org.washwright.rulebook;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;

/** One state of a rulebook as it is kept; its files stand in a table of their own. */
@Entity
@Table(name = "edition")
class StoredEdition {
    @Id
    UUID id;

    UUID workspaceId;

    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "rulebook_id")
    Rulebook rulebook;

    EditionState state;
    Integer number;
    String title;
    String textHash;
    String meaningHash;
    int errors;
    int warnings;
    int rules;
    int terms;
    boolean starter;

    UUID createdBy;
    String createdByName;
    Instant createdAt;
    UUID changedBy;
    String changedByName;
    Instant changedAt;
    UUID askedBy;
    String askedByName;
    Instant askedAt;
    String askedNote;
    UUID releasedBy;
    String releasedByName;
    Instant releasedAt;
    String releasedNote;
    String releasedDespite;

    /** Whether the counts and the meaning are those of the present files; saving a file does not read it. */
    boolean counted;

    UUID basedOn;
    UUID approvedBy;
    String approvedByName;
    Instant approvedAt;
    String approvedNote;
    String approvedHash;
    UUID withdrawnBy;
    String withdrawnByName;
    Instant withdrawnAt;
    String withdrawnReason;

    @Version
    int version;

    StoredEdition() {}

    StoredEdition(UUID workspaceId, Rulebook rulebook, Person by, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = workspaceId;
        this.rulebook = rulebook;
        this.state = EditionState.DRAFT;
        this.createdBy = by.id();
        this.createdByName = by.name();
        this.createdAt = now;
    }

    /** Takes over what was read of a bundle; whoever asked for a review of the old files has to ask again. */
    void hold(Reading reading, Person by, Instant now) {
        textHash = reading.textHash();
        count(reading);
        change(by, now);
    }

    /** Takes over what reading its present files told. */
    void count(Reading reading) {
        title = reading.title();
        meaningHash = reading.edition().map(e -> e.meaningHash()).orElse(null);
        errors = reading.errors();
        warnings = reading.warnings();
        rules = reading.edition().map(e -> e.rules().size()).orElse(0);
        terms = reading.edition()
                .map(e -> e.catalogue().terms().values().stream()
                        .mapToInt(map -> map.size())
                        .sum())
                .orElse(0);
        counted = true;
    }

    /** Has another file now; what that means is read later. */
    void touch(String newTextHash, Person by, Instant now) {
        textHash = newTextHash;
        meaningHash = null;
        counted = false;
        change(by, now);
    }

    private void change(Person by, Instant now) {
        changedBy = by.id();
        changedByName = by.name();
        changedAt = now;
        state = EditionState.DRAFT;
        askedBy = null;
        askedByName = null;
        askedAt = null;
        askedNote = null;
        approvedBy = null;
        approvedByName = null;
        approvedAt = null;
        approvedNote = null;
        approvedHash = null;
    }

    void approve(Person by, String note, Instant now) {
        approvedBy = by.id();
        approvedByName = by.name();
        approvedAt = now;
        approvedNote = note;
        approvedHash = textHash;
    }

    /** Goes back to its authors. */
    void giveBack() {
        state = EditionState.DRAFT;
        approvedBy = null;
        approvedByName = null;
        approvedAt = null;
        approvedNote = null;
        approvedHash = null;
    }

    void withdraw(Person by, String reason, Instant now) {
        state = EditionState.WITHDRAWN;
        withdrawnBy = by.id();
        withdrawnByName = by.name();
        withdrawnAt = now;
        withdrawnReason = reason;
    }

    void ask(Person by, String note, Instant now) {
        state = EditionState.ASKED;
        askedBy = by.id();
        askedByName = by.name();
        askedAt = now;
        askedNote = note;
    }

    void release(int asNumber, Person by, String note, String despite, Instant now) {
        state = EditionState.RELEASED;
        number = asNumber;
        releasedBy = by.id();
        releasedByName = by.name();
        releasedAt = now;
        releasedNote = note;
        releasedDespite = despite.isEmpty() ? null : despite;
    }

    boolean writtenBy(UUID account) {
        return account.equals(createdBy) || account.equals(changedBy);
    }

    EditionView view() {
        return new EditionView(
                id,
                rulebook.name,
                title,
                state.word(),
                Optional.ofNullable(number),
                starter,
                errors,
                warnings,
                rules,
                terms,
                Optional.ofNullable(meaningHash),
                textHash,
                new EditionView.Act(createdByName, createdAt.toString(), Optional.empty()),
                new EditionView.Act(changedByName, changedAt.toString(), Optional.empty()),
                act(askedByName, askedAt, askedNote),
                act(approvedByName, approvedAt, approvedNote),
                act(releasedByName, releasedAt, releasedNote),
                Optional.ofNullable(releasedDespite),
                act(withdrawnByName, withdrawnAt, withdrawnReason),
                Optional.ofNullable(basedOn),
                version);
    }

    private static Optional<EditionView.Act> act(String by, Instant at, String note) {
        return at == null
                ? Optional.empty()
                : Optional.of(new EditionView.Act(by, at.toString(), Optional.ofNullable(note)));
    }
}

package org.washwright.access;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.UUID;

/** A browser that signed in. The cookie holds the secret; only its hash is kept. */
@Entity
class SignInSession {
    @Id
    UUID id;

    @Column(name = "workspace_id")
    UUID workspaceId;

    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "account_id")
    Account account;

    String secretHash;
    Instant createdAt;
    Instant lastSeenAt;

    SignInSession() {}

    SignInSession(Account account, Secret secret, Instant now) {
        this.id = UUID.randomUUID();
        this.workspaceId = account.workspace.id;
        this.account = account;
        this.secretHash = secret.hash();
        this.createdAt = now;
        this.lastSeenAt = now;
    }
}

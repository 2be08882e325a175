package org.washwright.access;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.UUID;

/** A program's key, made by an account and good for what that account may do. Only its hash is kept. */
@Entity
class ApiToken {
    @Id
    UUID id;

    @Column(name = "workspace_id")
    UUID workspaceId;

    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "account_id")
    Account account;

    String label;
    String secretHash;
    Instant createdAt;
    Instant expiresAt;

    ApiToken() {}

    ApiToken(Account account, String label, Secret secret, Instant now, Instant expiresAt) {
        this.id = UUID.randomUUID();
        this.workspaceId = account.workspace.id;
        this.account = account;
        this.label = label;
        this.secretHash = secret.hash();
        this.createdAt = now;
        this.expiresAt = expiresAt;
    }
}

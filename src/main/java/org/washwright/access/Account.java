package org.washwright.access;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** Someone who may sign in. */
@Entity
class Account {
    @Id
    UUID id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "workspace_id")
    Workspace workspace;

    String name;
    String passwordHash;

    @JdbcTypeCode(SqlTypes.ARRAY)
    String[] roles;

    boolean demo;
    boolean enabled;
    Instant createdAt;

    Account() {}

    Account(Workspace workspace, String name, String passwordHash, Set<String> roles, boolean demo, Instant now) {
        this.id = UUID.randomUUID();
        this.workspace = workspace;
        this.name = name;
        this.passwordHash = passwordHash;
        this.roles = roles.stream().sorted().toArray(String[]::new);
        this.demo = demo;
        this.enabled = true;
        this.createdAt = now;
    }

    SignedIn signedIn(SignedIn.By by) {
        return new SignedIn(id, name, Set.of(roles), workspace.id, by);
    }
}

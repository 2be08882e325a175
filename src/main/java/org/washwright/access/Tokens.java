package org.washwright.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.problem.NotFound;

/** The keys of programs. */
@ApplicationScoped
class Tokens {
    private final EntityManager store;
    private final Accounts accounts;
    private final DemoAccounts demo;
    private final Clock clock;

    Tokens(EntityManager store, Accounts accounts, DemoAccounts demo, Clock clock) {
        this.store = store;
        this.accounts = accounts;
        this.demo = demo;
        this.clock = clock;
    }

    /** Makes a token; its secret is in the answer and nowhere else. */
    @Transactional
    NewToken create(UUID workspaceId, UUID accountId, String label, int days) {
        Account account = accounts.find(workspaceId, accountId).orElseThrow(() -> NotFound.of("account", accountId));
        Secret secret = Secret.random("ww_");
        Instant now = clock.instant();
        ApiToken token = new ApiToken(account, label, secret, now, now.plus(Duration.ofDays(days)));
        store.persist(token);
        return new NewToken(token.id, label, secret.text(), token.expiresAt);
    }

    @Transactional
    Optional<SignedIn> find(Secret secret) {
        Instant now = clock.instant();
        return store.createQuery("from ApiToken where secretHash = :hash", ApiToken.class)
                .setParameter("hash", secret.hash())
                .getResultStream()
                .findFirst()
                .filter(token -> token.expiresAt.isAfter(now))
                .filter(token -> token.account.enabled && (!token.account.demo || demo.usable()))
                .map(token -> token.account.signedIn(SignedIn.By.TOKEN));
    }

    @Transactional
    List<KnownToken> of(UUID workspaceId, UUID accountId) {
        return store.createQuery(
                        "from ApiToken where workspaceId = :workspace and account.id = :account order by createdAt, id",
                        ApiToken.class)
                .setParameter("workspace", workspaceId)
                .setParameter("account", accountId)
                .getResultStream()
                .map(token -> new KnownToken(token.id, token.label, token.createdAt, token.expiresAt))
                .toList();
    }

    /** Ends a token of this account; another's is as good as not there. */
    @Transactional
    void revoke(UUID workspaceId, UUID accountId, UUID id) {
        int gone = store.createQuery("delete from ApiToken where id = :id and workspaceId = :workspace"
                        + " and account.id = :account")
                .setParameter("id", id)
                .setParameter("workspace", workspaceId)
                .setParameter("account", accountId)
                .executeUpdate();
        if (gone == 0) {
            throw NotFound.of("token", id);
        }
    }

    /** A token just made. */
    record NewToken(UUID id, String label, String token, Instant expiresAt) {}

    /** A token made earlier. */
    record KnownToken(UUID id, String label, Instant createdAt, Instant expiresAt) {}
}

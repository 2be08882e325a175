package org.washwright.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Signed-in browsers, kept in the database so that a restart signs nobody out and signing out is final. */
@ApplicationScoped
class Sessions {
    /** A session unused for this long is over. */
    static final Duration IDLE = Duration.ofHours(12);
    /** A session this old is over, used or not. */
    static final Duration LONGEST = Duration.ofDays(7);

    private static final Duration NOTE_USE_EVERY = Duration.ofMinutes(5);

    private final EntityManager store;
    private final Accounts accounts;
    private final DemoAccounts demo;
    private final Clock clock;

    Sessions(EntityManager store, Accounts accounts, DemoAccounts demo, Clock clock) {
        this.store = store;
        this.accounts = accounts;
        this.demo = demo;
        this.clock = clock;
    }

    /** Opens a session if name and password are right; the secret goes into the cookie. */
    @Transactional
    Optional<Secret> open(String name, String password) {
        Optional<Account> account = accounts.named(name).filter(this::mayEnter);
        if (account.isEmpty()) {
            Passwords.spendTheSameTime(password);
            return Optional.empty();
        }
        if (!Passwords.matches(password, account.get().passwordHash)) {
            return Optional.empty();
        }
        Instant now = clock.instant();
        store.createQuery("delete from SignInSession where createdAt < :oldest or lastSeenAt < :idle")
                .setParameter("oldest", now.minus(LONGEST))
                .setParameter("idle", now.minus(IDLE))
                .executeUpdate();
        Secret secret = Secret.random("");
        store.persist(new SignInSession(account.get(), secret, now));
        return Optional.of(secret);
    }

    /** Whose session it is, if it is one and still open. */
    @Transactional
    Optional<SignedIn> find(Secret secret) {
        Instant now = clock.instant();
        Optional<SignInSession> found = store.createQuery(
                        "from SignInSession where secretHash = :hash", SignInSession.class)
                .setParameter("hash", secret.hash())
                .getResultStream()
                .findFirst()
                .filter(session -> session.createdAt.isAfter(now.minus(LONGEST)))
                .filter(session -> session.lastSeenAt.isAfter(now.minus(IDLE)))
                .filter(session -> mayEnter(session.account));
        found.filter(session -> session.lastSeenAt.isBefore(now.minus(NOTE_USE_EVERY)))
                .ifPresent(session -> session.lastSeenAt = now);
        return found.map(session -> session.account.signedIn(SignedIn.By.SESSION));
    }

    @Transactional
    void close(Secret secret) {
        store.createQuery("delete from SignInSession where secretHash = :hash")
                .setParameter("hash", secret.hash())
                .executeUpdate();
    }

    private boolean mayEnter(Account account) {
        return account.enabled && (!account.demo || demo.usable());
    }
}

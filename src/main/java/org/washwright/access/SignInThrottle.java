package org.washwright.access;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Slows down the guessing of passwords.
 *
 * <p>After some wrong passwords for one name from one address, and after more from one address for whatever names, the
 * next tries are refused for a while that doubles with each further wrong one. It is kept in memory, bounded, and
 * forgotten at a restart. A name alone is never blocked: else a stranger could lock its owner out.
 */
@ApplicationScoped
class SignInThrottle {
    private static final int FREE_PER_NAME = 5;
    private static final int FREE_PER_ADDRESS = 25;
    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    private static final Duration FORGET_AFTER = Duration.ofHours(1);
    private static final int REMEMBERED = 10_000;

    private final Clock clock;
    private final Map<String, Wrong> wrong = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Wrong> eldest) {
            return size() > REMEMBERED;
        }
    };

    SignInThrottle(Clock clock) {
        this.clock = clock;
    }

    /** How long this caller has to wait before the next try, if at all. */
    synchronized Optional<Duration> waitFor(String name, String address) {
        Instant now = clock.instant();
        Instant until = later(free(pair(name, address), now), free(address, now));
        return until.isAfter(now) ? Optional.of(Duration.between(now, until)) : Optional.empty();
    }

    synchronized void failed(String name, String address) {
        Instant now = clock.instant();
        count(pair(name, address), FREE_PER_NAME, now);
        count(address, FREE_PER_ADDRESS, now);
    }

    synchronized void succeeded(String name, String address) {
        wrong.remove(pair(name, address));
    }

    private void count(String key, int allowed, Instant now) {
        Wrong before = wrong.get(key);
        int times = before == null || before.at.plus(FORGET_AFTER).isBefore(now) ? 1 : before.times + 1;
        wrong.put(key, new Wrong(times, now, now.plus(delay(times - allowed))));
    }

    private static Duration delay(int excess) {
        if (excess < 0) {
            return Duration.ZERO;
        }
        Duration wait = FIRST_WAIT.multipliedBy(1L << Math.min(excess, 10));
        return wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait;
    }

    private Instant free(String key, Instant now) {
        Wrong known = wrong.get(key);
        return known == null ? now : known.freeAt;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static String pair(String name, String address) {
        String shortened = name.length() > 200 ? name.substring(0, 200) : name;
        return shortened.toLowerCase(Locale.ROOT) + "\n" + address;
    }

    private record Wrong(int times, Instant at, Instant freeAt) {}
}

package org.washwright.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class SignInThrottleTest {
    private final SetClock clock = new SetClock();
    private final SignInThrottle throttle = new SignInThrottle(clock);

    @Test
    void the_first_wrong_passwords_cost_nothing() {
        fail("ann", "10.0.0.1", 4);
        assertTrue(throttle.waitFor("ann", "10.0.0.1").isEmpty());
    }

    @Test
    void each_further_wrong_password_doubles_the_wait_up_to_a_quarter_of_an_hour() {
        fail("ann", "10.0.0.1", 5);
        assertEquals(Duration.ofSeconds(30), throttle.waitFor("ann", "10.0.0.1").orElseThrow());
        fail("ann", "10.0.0.1", 1);
        assertEquals(Duration.ofSeconds(60), throttle.waitFor("ANN", "10.0.0.1").orElseThrow());
        fail("ann", "10.0.0.1", 30);
        assertEquals(Duration.ofMinutes(15), throttle.waitFor("ann", "10.0.0.1").orElseThrow());
    }

    @Test
    void the_wait_ends_with_time_and_the_count_with_success() {
        fail("ann", "10.0.0.1", 5);
        clock.now = clock.now.plusSeconds(30);
        assertTrue(throttle.waitFor("ann", "10.0.0.1").isEmpty());
        throttle.succeeded("ann", "10.0.0.1");
        fail("ann", "10.0.0.1", 1);
        assertTrue(throttle.waitFor("ann", "10.0.0.1").isEmpty());
    }

    @Test
    void a_stranger_cannot_lock_the_owner_out_from_another_address() {
        fail("ann", "10.0.0.1", 20);
        assertTrue(throttle.waitFor("ann", "10.0.0.2").isEmpty());
    }

    @Test
    void one_address_cannot_try_many_names() {
        for (int i = 0; i < 25; i++) {
            fail("name" + i, "10.0.0.1", 1);
        }
        assertTrue(throttle.waitFor("another", "10.0.0.1").isPresent());
    }

    private void fail(String name, String address, int times) {
        for (int i = 0; i < times; i++) {
            throttle.failed(name, address);
        }
    }

    private static final class SetClock extends Clock {
        private Instant now = Instant.parse("2026-01-01T00:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}

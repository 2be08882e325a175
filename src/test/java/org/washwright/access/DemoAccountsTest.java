package org.washwright.access;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoAccountsTest {
    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "127.1.2.3", "localhost", "::1"})
    void a_host_that_only_this_machine_reaches_is_loopback(String host) {
        assertTrue(DemoAccounts.loopback(host));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "192.168.1.10", "no such host", "no-such-host.invalid"})
    void any_other_host_is_not(String host) {
        assertFalse(DemoAccounts.loopback(host));
    }
}

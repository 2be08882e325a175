package org.washwright.access;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;

/** The clock everything at the edges asks; a test may replace it. */
class SystemClock {
    @Produces
    @DefaultBean
    Clock clock() {
        return Clock.systemUTC();
    }
}

package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** Ends the program at once after a named step of a release, so that a test can see what is left of it. Never set otherwise. */
@ApplicationScoped
class ReleaseHalt {
    private static final Logger LOG = Logger.getLogger(ReleaseHalt.class);
    private static final int KILLED = 137;

    private final Optional<ReleaseStep> step;

    ReleaseHalt(@ConfigProperty(name = "washwright.test.halt-after-step") Optional<ReleaseStep> step) {
        this.step = step;
    }

    void after(ReleaseStep done) {
        if (step.filter(done::equals).isPresent()) {
            LOG.warnf("Halting after the step %s, as washwright.test.halt-after-step asks.", done);
            Runtime.getRuntime().halt(KILLED);
        }
    }
}

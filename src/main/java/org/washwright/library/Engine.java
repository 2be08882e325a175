package org.washwright.library;

import java.util.function.Supplier;
import org.washwright.drools.DroolsInference;
import org.washwright.drools.Units;
import org.washwright.engine.InferenceFactory;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;

/** What runs the rules. All engines give the same bytes; they differ in how soon and how fast they answer. */
public enum Engine {
    /** Made for many tasks: ready at once, fast on each. */
    QUICK(SweepInference::factory),
    /** Plain loops over the rule tree: ready at once, slow on each; what the others are checked against. */
    PLAIN(ReferenceInterpreter::factory),
    /** Rules compiled by Drools, kept in the user's cache folder: seconds until ready for the first time. */
    COMPILED(() -> DroolsInference.factory(Units.ofUser()));

    // A supplier, so that naming an engine loads no other one.
    private final Supplier<InferenceFactory> factory;

    Engine(Supplier<InferenceFactory> factory) {
        this.factory = factory;
    }

    /** How it runs rules. */
    public InferenceFactory factory() {
        return factory.get();
    }
}

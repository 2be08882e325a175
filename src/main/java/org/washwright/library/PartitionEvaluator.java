package org.washwright.library;

import java.io.Serializable;
import java.util.Iterator;
import java.util.TreeMap;
import java.util.function.Function;
import org.washwright.assessment.Wishes;

/**
 * A function from the tasks of a partition to what came of them, in the same order. It travels to the workers of a
 * distributed job as plain bytes; each worker JVM loads the edition once, whatever the number of partitions.
 */
public final class PartitionEvaluator implements Function<Iterator<String>, Iterator<Evaluation>>, Serializable {
    private static final long serialVersionUID = 1L;

    private final byte[] bundle;
    private final Engine engine;
    private final TreeMap<String, Double> weights;
    private final TreeMap<String, String> assumptions;
    private final String asOf;
    private final long seed;

    /**
     * A function by an edition.
     *
     * @param bundle bytes of the edition's zip bundle
     */
    public PartitionEvaluator(byte[] bundle, Engine engine, Wishes wishes) {
        this.bundle = bundle.clone();
        this.engine = engine;
        this.weights = new TreeMap<>(wishes.weights());
        this.assumptions = new TreeMap<>(wishes.assumptions());
        this.asOf = wishes.asOf();
        this.seed = wishes.seed();
    }

    @Override
    public Iterator<Evaluation> apply(Iterator<String> tasks) {
        Wishes wishes = new Wishes(weights, assumptions, asOf, seed);
        return SharedEvaluators.of(bundle, engine).evaluateAll(tasks, wishes);
    }
}

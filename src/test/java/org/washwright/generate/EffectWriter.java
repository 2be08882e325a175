package org.washwright.generate;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.washwright.generate.RuleWriter.Bound;
import org.washwright.quantity.Dimension;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;

/** Writes consequences at random. */
final class EffectWriter {

    private final Random random;
    private final List<Bound> bound;
    private final List<String> free;

    /**
     * A writer for one rule.
     *
     * @param bound what its conditions bound
     * @param free conclusions that it may draw
     */
    EffectWriter(Random random, List<Bound> bound, List<String> free) {
        this.random = random;
        this.bound = bound;
        this.free = free;
    }

    String effect() {
        int form = random.nextInt(10);
        if (form < 4 && !free.isEmpty()) {
            String id = free.get(random.nextInt(free.size()));
            String subject = random.nextInt(3) == 0 || bound.isEmpty()
                    ? ""
                    : bound.get(random.nextInt(bound.size())).variable() + ", ";
            return "conclude(\"" + id + "\", " + subject + reason() + ")";
        }
        return switch (form) {
            case 4 ->
                "ruleOut(" + target() + ", \""
                        + List.of("main", "alone", "first", "last").get(random.nextInt(4)) + "\", " + reason() + ")";
            case 5 ->
                "require(" + target() + ", \""
                        + List.of("first", "second", "last").get(random.nextInt(3)) + "\", "
                        + (random.nextBoolean() ? "after" : "before") + "(\"main\"), " + reason() + ")";
            case 6 ->
                "limit(" + target() + ", \"main\", \"temperature\", " + (random.nextBoolean() ? "max" : "min") + "(\""
                        + Grid.text(Dimension.TEMPERATURE, "60") + "\"), " + reason() + ")";
            case 7 ->
                "caution(\"hazard-" + (random.nextBoolean() ? "a" : "b") + "\", " + target() + ", " + reason() + ")";
            case 8 -> "verify(\"test-method-a\", " + reason() + ")";
            default ->
                (random.nextBoolean() ? "support(" : "oppose(") + target() + ", \""
                        + List.of("works", "fine", "safe").get(random.nextInt(3)) + "\", " + (1 + random.nextInt(3))
                        + ", " + reason() + ")";
        };
    }

    private String target() {
        List<String> processes = new ArrayList<>();
        bound.stream().filter(b -> b.type().name().equals(FactTypes.PROCESS)).forEach(b -> processes.add(b.variable()));
        return processes.isEmpty() || random.nextInt(3) == 0
                ? "\"" + List.of("any", "water", "oil", "oil-b").get(random.nextInt(4)) + "\""
                : processes.get(random.nextInt(processes.size()));
    }

    private String reason() {
        if (bound.isEmpty() || random.nextBoolean()) {
            return "\"So it is " + random.nextInt(5) + ".\"";
        }
        Bound b = bound.get(random.nextInt(bound.size()));
        List<Field> all = List.copyOf(b.type().fields().values());
        Field field = all.get(random.nextInt(all.size()));
        return "\"Because of {" + b.variable() + "} with {" + b.variable() + "." + field.name() + "}.\"";
    }
}

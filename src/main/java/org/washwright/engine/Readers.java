package org.washwright.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Field;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Group;

/** Which rules of an edition read each attribute of a task: by itself, by what the catalogue says of it, or by formula. */
public final class Readers {

    private final FactBase probe;
    private final Map<String, List<Rule>> byAttribute = new HashMap<>();

    private Readers(FactBase probe) {
        this.probe = probe;
    }

    /** The readers of an edition. */
    public static Readers of(Edition edition) {
        // A task with one entry of everything, of which nothing is known, shows what each formula reads.
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        for (Group group : Group.values()) {
            lists.put(group, new CleaningTask.Entries(List.of(Entry.EMPTY), false));
        }
        CleaningTask task = new CleaningTask("nothing known", "", lists, Map.of());
        Readers readers = new Readers(FactBuilder.build(task, edition, Map.of(), new Diagnostics()));
        edition.rules().forEach(readers::rule);
        return readers;
    }

    /**
     * Rules that read an attribute, in their order.
     *
     * @param type name of the fact type
     * @param attribute name of the field, without any property of its term
     */
    public List<Rule> of(String type, String attribute) {
        return byAttribute.getOrDefault(type + "." + attribute, List.of());
    }

    private void rule(Rule rule) {
        Set<String> read = new LinkedHashSet<>();
        for (Pattern pattern : rule.patterns()) {
            pattern.condition().tests().forEach(test -> {
                read(pattern, test.field(), read);
                if (test.operand() instanceof Condition.Operand.FieldOf f) {
                    read(rule.patterns().get(f.pattern()), f.field(), read);
                }
            });
        }
        read.forEach(
                key -> byAttribute.computeIfAbsent(key, k -> new ArrayList<>()).add(rule));
    }

    private void read(Pattern pattern, Field field, Set<String> read) {
        probe.all().stream()
                .filter(f -> f.type().name().equals(pattern.type().name()))
                .findFirst()
                .ifPresent(f -> read(f, f.type().field(field.attribute()).orElseThrow(), read));
    }

    private void read(Fact fact, Field field, Set<String> read) {
        List<String> inputs = new ArrayList<>(fact.origin(field).inputs());
        inputs.addAll(fact.origin(field).further());
        read.add(fact.type().name() + "." + field.name());
        for (String input : inputs) {
            int slash = input.lastIndexOf('/');
            Optional<Fact> other = probe.fact(input.substring(0, Math.max(0, slash)));
            other.ifPresent(f -> f.type()
                    .field(input.substring(slash + 1))
                    .filter(x -> !read.contains(f.type().name() + "." + x.name()))
                    .ifPresent(x -> read(f, x, read)));
        }
    }
}

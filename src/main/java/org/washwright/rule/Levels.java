package org.washwright.rule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Orders rules by the conclusions that they wait for: a rule's level is one above the highest level of any rule that
 * concludes something it matches. A circle has no level.
 *
 * @param levels level by rule id; rules on or behind a circle are missing
 * @param circle ids of the rules of one circle; empty when there is none
 */
public record Levels(Map<String, Integer> levels, List<String> circle) {

    /** Levels of these rules. */
    public static Levels of(List<Rule> rules) {
        Map<String, Set<String>> concluders = new HashMap<>();
        for (Rule r : rules) {
            concluded(r)
                    .forEach(c ->
                            concluders.computeIfAbsent(c, k -> new TreeSet<>()).add(r.id()));
        }
        Map<String, Set<String>> waitsFor = new TreeMap<>();
        Map<String, Set<String>> feeds = new HashMap<>();
        for (Rule r : rules) {
            Set<String> sources = new TreeSet<>();
            matched(r, concluders.keySet()).forEach(c -> sources.addAll(concluders.getOrDefault(c, Set.of())));
            waitsFor.put(r.id(), sources);
            sources.forEach(s -> feeds.computeIfAbsent(s, k -> new TreeSet<>()).add(r.id()));
        }
        Map<String, Integer> open = new HashMap<>();
        Deque<String> ready = new ArrayDeque<>();
        waitsFor.forEach((id, sources) -> {
            open.put(id, sources.size());
            if (sources.isEmpty()) {
                ready.add(id);
            }
        });
        Map<String, Integer> levels = new TreeMap<>();
        while (!ready.isEmpty()) {
            String id = ready.poll();
            int level = waitsFor.get(id).stream()
                    .mapToInt(s -> levels.get(s) + 1)
                    .max()
                    .orElse(0);
            levels.put(id, level);
            for (String next : feeds.getOrDefault(id, Set.of())) {
                if (open.merge(next, -1, Integer::sum) == 0) {
                    ready.add(next);
                }
            }
        }
        return new Levels(levels, circle(waitsFor, levels.keySet()));
    }

    private static List<String> circle(Map<String, Set<String>> waitsFor, Set<String> done) {
        String at = waitsFor.keySet().stream()
                .filter(id -> !done.contains(id))
                .findFirst()
                .orElse("");
        List<String> path = new ArrayList<>();
        while (!at.isEmpty() && !path.contains(at)) {
            path.add(at);
            at = waitsFor.get(at).stream()
                    .filter(id -> !done.contains(id))
                    .findFirst()
                    .orElse("");
        }
        return at.isEmpty() ? List.of() : List.copyOf(path.subList(path.indexOf(at), path.size()));
    }

    /** Conclusions that a rule draws. */
    public static Set<String> concluded(Rule rule) {
        Set<String> out = new TreeSet<>();
        rule.effects().forEach(e -> {
            if (e instanceof Effect.Conclude c) {
                out.add(c.conclusion());
            }
        });
        return out;
    }

    /** Conclusions that a rule matches; all of {@code known} when a pattern does not say which. */
    public static Set<String> matched(Rule rule, Set<String> known) {
        Set<String> out = new TreeSet<>();
        for (Pattern p : rule.patterns()) {
            if (p.type().name().equals(FactTypes.CONCLUSION)) {
                out.addAll(named(p.condition()).orElse(new TreeSet<>(known)));
            }
        }
        return out;
    }

    private static java.util.Optional<Set<String>> named(Condition condition) {
        if (condition instanceof Condition.Test t
                && t.field().name().equals("id")
                && (t.op() == Op.EQ || t.op() == Op.IN)
                && t.operand() instanceof Condition.Operand.Terms terms) {
            return java.util.Optional.of(new TreeSet<>(terms.ids()));
        }
        if (condition instanceof Condition.All all) {
            return all.parts().stream()
                    .map(Levels::named)
                    .flatMap(java.util.Optional::stream)
                    .findFirst();
        }
        return java.util.Optional.empty();
    }
}

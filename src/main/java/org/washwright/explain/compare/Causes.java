package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.assessment.Answer;
import org.washwright.explain.compare.Comparison.Cause;

/** Finds what made a difference, and keeps the rules that were named. */
final class Causes {

    static final String BEFORE = "before";
    static final String AFTER = "after";
    static final String BOTH = "both";
    static final String RULE = "rule";

    private final Side before;
    private final Side after;
    private final List<Cause> asked;
    private final Map<String, Answer.Rule> named = new TreeMap<>();

    Causes(Side before, Side after, List<Comparison.AskedChange> asked) {
        this.before = before;
        this.after = after;
        this.asked = asked.stream()
                .map(a -> new Cause(a.kind(), a.place(), a.name(), BOTH, 0, a.before() + " → " + a.after()))
                .toList();
    }

    Side before() {
        return before;
    }

    Side after() {
        return after;
    }

    /** The rule of a finding, which is thereby named. */
    String title(Side index, String rule) {
        index.rule(rule).ifPresent(r -> named.put(rule, r));
        return index.title(rule);
    }

    /** Firings of one answer as causes, each rule once. */
    List<Cause> of(String side, Collection<Integer> firings) {
        Side index = side.equals(BEFORE) ? before : after;
        Map<String, Cause> out = new LinkedHashMap<>();
        for (int n : firings) {
            String rule = index.firing(n).rule();
            String open = index.firing(n).certain() ? "" : "not decided";
            out.putIfAbsent(rule, new Cause(RULE, rule, title(index, rule), side, n, open));
        }
        return List.copyOf(out.values());
    }

    /** Rules that are behind one of two things only; all of them when they are the same. Firings are told by identity. */
    List<Cause> between(Collection<Integer> earlier, Collection<Integer> later) {
        Map<Side.FiringKey, Integer> old = new LinkedHashMap<>();
        Map<Side.FiringKey, Integer> now = new LinkedHashMap<>();
        earlier.forEach(n -> old.putIfAbsent(before.key(n), n));
        later.forEach(n -> now.putIfAbsent(after.key(n), n));
        Set<Side.FiringKey> common = new LinkedHashSet<>(old.keySet());
        common.retainAll(now.keySet());
        List<Integer> lost = new ArrayList<>();
        List<Integer> gained = new ArrayList<>();
        old.forEach((key, n) -> {
            if (!common.contains(key)) {
                lost.add(n);
            }
        });
        now.forEach((key, n) -> {
            if (!common.contains(key)) {
                gained.add(n);
            }
        });
        if (lost.isEmpty() && gained.isEmpty()) {
            return of(AFTER, now.values()).stream()
                    .map(c -> new Cause(c.kind(), c.id(), c.name(), BOTH, c.firing(), c.detail()))
                    .toList();
        }
        return union(of(BEFORE, lost), of(AFTER, gained));
    }

    /** The causes found; when there are none, what was asked differently. */
    List<Cause> orAsked(List<Cause> found) {
        return found.isEmpty() ? asked : found;
    }

    /** Each cause once. */
    static List<Cause> union(List<Cause> first, List<Cause> second) {
        Set<Cause> all = new LinkedHashSet<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }

    /** Every rule that was named, by id; of a rule of both answers the later one's words. */
    List<Comparison.RuleCite> rules() {
        List<Comparison.RuleCite> out = new ArrayList<>();
        named.keySet().forEach(id -> {
            Side index = after.rule(id).isPresent() ? after : before;
            Answer.Rule rule = index.rule(id).orElseThrow();
            out.add(new Comparison.RuleCite(
                    id,
                    rule.title(),
                    rule.basis(),
                    rule.sources().stream().map(index::cited).toList(),
                    rule.place()));
        });
        return out;
    }
}

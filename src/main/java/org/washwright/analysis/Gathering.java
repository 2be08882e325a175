package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.cases.RuleReach;
import org.washwright.engine.Fact;
import org.washwright.engine.Firing;
import org.washwright.engine.Logic;
import org.washwright.engine.Truth;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;

/** The examples of one rule in the making. */
final class Gathering {
    /** Most examples of one comparison: a list of terms is shown term by term. */
    private static final int MOST_OF_A_TEST = 12;

    private final Edition edition;
    private final Space space;
    private final Choices choices;
    private final WitnessSearch shortSearch;
    private final String asOf;
    private final Rule rule;
    private final Probe probe;
    private final Variants variants;
    private final List<Example> examples = new ArrayList<>();
    private final Set<CleaningTask> known = new HashSet<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Set<String> shown = new HashSet<>();

    /**
     * Examples of a rule.
     *
     * @param shortSearch looks for what no variant of a task has shown; there may be none
     */
    Gathering(Edition edition, Space space, Choices choices, WitnessSearch shortSearch, String asOf, Rule rule) {
        this.edition = edition;
        this.space = space;
        this.choices = choices;
        this.shortSearch = shortSearch;
        this.asOf = asOf;
        this.rule = rule;
        this.probe = Probe.of(edition, space, List.of(rule), asOf);
        this.variants = new Variants(edition, choices, rule, probe);
    }

    List<Example> examples() {
        return List.copyOf(examples);
    }

    void add(boolean fires, CleaningTask task, int pattern, Optional<Condition.Test> test, String words) {
        CleaningTask plain = new CleaningTask(rule.id(), "", task.lists(), task.declared());
        if (known.add(plain)) {
            examples.add(new Example(rule.id(), fires, plain, asOf, pattern, test, words));
        }
    }

    /** Variants of a task on which the rule fires. */
    void around(CleaningTask base) {
        Optional<Probe.Seen> seen = probe.see(base);
        if (seen.isEmpty() || !seen.get().fires(rule.id())) {
            return;
        }
        List<Optional<String>> tuple =
                seen.get().firings().stream().filter(Firing::certain).findFirst().orElseThrow().facts().stream()
                        .map(f -> f.map(Fact::id))
                        .toList();
        for (Variants.Variant v : variants.of(base)) {
            if (v.seen().silent(rule.id())) {
                miss(v, failing(tuple, v.seen()));
            } else {
                other(v, tuple);
            }
        }
    }

    private void miss(Variants.Variant v, List<Failing> failing) {
        if (failing.isEmpty()) {
            // A rule over lines: which stage was missing is not kept.
            kept(v, -1, Optional.empty(), v.edit().pointer());
        }
        boolean alone = failing.size() == 1;
        // Of several that fail together, the one whose own attribute was changed tells most.
        List<Failing> telling = failing.stream()
                .sorted(Comparator.comparing((Failing f) -> !f.test()
                        .field()
                        .attribute()
                        .equals(v.edit().attribute().name())))
                .toList();
        for (Failing f : telling) {
            String of = f.pattern() + " " + f.test();
            boolean number = f.test().field().type() instanceof FieldType.NumberType;
            String key = number ? of + " " + v.edit().pointer() + " " + alone : of + " " + f.value() + " " + alone;
            if (alone || counts.getOrDefault(of, 0) == 0) {
                kept(v, f.pattern(), Optional.of(f.test()), key);
            }
        }
    }

    private void kept(Variants.Variant v, int pattern, Optional<Condition.Test> test, String key) {
        String of = pattern + " " + test;
        boolean number = v.edit().attribute().type() instanceof FieldType.NumberType;
        Variants.Variant near = number ? variants.tightened(v) : v;
        String side = number && pattern >= 0 ? " " + near.edit().in(near.changed()) : "";
        if (counts.getOrDefault(of, 0) < MOST_OF_A_TEST && shown.add(key + side)) {
            counts.merge(of, 1, Integer::sum);
            if (number || !near.base().equals(v.base())) {
                add(true, near.base(), pattern, test, "just still");
            }
            add(false, near.changed(), pattern, test, "just no longer");
        }
    }

    /** A variant on which the rule still fires shows one more term of a list. */
    private void other(Variants.Variant v, List<Optional<String>> tuple) {
        for (int i = 0; i < tuple.size(); i++) {
            Optional<Fact> fact = tuple.get(i).flatMap(id -> v.seen().facts().fact(id));
            int pattern = i;
            fact.ifPresent(f -> rule.patterns().get(pattern).condition().tests().forEach(t -> {
                boolean list = t.operand() instanceof Condition.Operand.Terms terms
                        && terms.ids().size() > 1;
                String key = "fires " + pattern + " " + t + " " + f.value(t.field());
                if (list
                        && v.edit().group().map(g -> f.id().startsWith(g.key())).orElse(false)
                        && shown.add(key)) {
                    add(true, v.changed(), pattern, Optional.of(t), "for another term");
                }
            }));
        }
    }

    /** What a pattern needs that no variant has shown. */
    void pattern(int i) {
        Pattern p = rule.patterns().get(i);
        if (p.sign() == Sign.NOT) {
            shortSearch
                    .fires(Rewrites.found(rule, i), this::silent)
                    .ifPresent(found -> add(false, found.task(), i, Optional.empty(), "finds what must not be there"));
            p.condition()
                    .tests()
                    .forEach(t -> Rewrites.passedOver(rule, i, t)
                            .flatMap(r -> shortSearch.fires(r, found -> fires(found.task())))
                            .ifPresent(found ->
                                    add(true, found.task(), i, Optional.of(t), "passes over what differs in this")));
            return;
        }
        if (p.type().name().equals(FactTypes.PROCESS)) {
            // Processes do not vary from task to task: on which of them the rule fires is part of every example.
            return;
        }
        p.condition().tests().distinct().forEach(t -> {
            if (counts.getOrDefault(i + " " + Optional.of(t), 0) == 0) {
                Rewrites.negated(rule, i, t)
                        .flatMap(r -> shortSearch.fires(r, this::silent))
                        .ifPresent(found -> add(false, found.task(), i, Optional.of(t), "when this is otherwise"));
            }
        });
    }

    /** True when the rule fires on a task. */
    boolean fires(CleaningTask task) {
        return probe.see(task).map(s -> s.fires(rule.id())).orElse(false);
    }

    private boolean silent(WitnessSearch.Found found) {
        return probe.see(found.task()).map(s -> s.silent(rule.id())).orElse(false);
    }

    /** Tasks with one more entry, so that it matters which entry a conclusion or a value is about. */
    void joins(CleaningTask base) {
        for (int i = 0; i < rule.patterns().size(); i++) {
            int pattern = i;
            rule.patterns().get(i).condition().tests().filter(Space::isJoin).forEach(t -> {
                Rule loose = Rewrites.without(rule, pattern, t);
                List<Rule> rules = edition.rules().stream()
                        .map(r -> r.id().equals(rule.id()) ? loose : r)
                        .toList();
                Probe other = Probe.of(edition.with(rules), space, List.of(loose), asOf);
                withOneMore(base).stream()
                        .filter(task -> tells(task, other))
                        .findFirst()
                        .ifPresent(task -> add(true, task, pattern, Optional.of(t), "on one of two entries"));
            });
        }
    }

    private boolean tells(CleaningTask task, Probe other) {
        Optional<Probe.Seen> strict = probe.see(task).filter(s -> s.fires(rule.id()));
        Optional<Probe.Seen> loose = other.see(task);
        return strict.isPresent()
                && loose.isPresent()
                && !(RuleReach.on(certain(strict.get())).equals(RuleReach.on(certain(loose.get())))
                        && RuleReach.about(certain(strict.get())).equals(RuleReach.about(certain(loose.get()))));
    }

    private List<Firing> certain(Probe.Seen seen) {
        return seen.firings().stream().filter(Firing::certain).toList();
    }

    private List<CleaningTask> withOneMore(CleaningTask base) {
        List<CleaningTask> out = new ArrayList<>();
        base.lists().forEach((group, entries) -> {
            if (!group.isList() || entries.entries().isEmpty()) {
                return;
            }
            int last = entries.entries().size();
            List<Entry> more = new ArrayList<>(entries.entries());
            more.add(more.get(last - 1));
            CleaningTask two = base.with(group, new CleaningTask.Entries(more, false));
            group.attributes().stream()
                    .filter(a -> more.get(last).given().containsKey(a.name()))
                    .forEach(a -> {
                        TaskEdit edit = new TaskEdit(Optional.of(group), last, a);
                        for (Given given : choices.of(edit)) {
                            out.add(edit.set(two, given));
                        }
                    });
        });
        return out;
    }

    /** A comparison that fails on the facts on which the rule fired before, and the value it meets there. */
    private record Failing(int pattern, Condition.Test test, String value) {}

    private List<Failing> failing(List<Optional<String>> tuple, Probe.Seen seen) {
        List<Failing> out = new ArrayList<>();
        List<Fact> earlier = new ArrayList<>();
        for (int i = 0; i < tuple.size(); i++) {
            Pattern p = rule.patterns().get(i);
            Fact fact = tuple.get(i).flatMap(id -> seen.facts().fact(id)).orElse(null);
            if (p.type().name().equals(FactTypes.STAGE)) {
                return List.of();
            }
            int pattern = i;
            if (fact == null && p.sign() == Sign.POSITIVE) {
                p.condition().tests().forEach(t -> out.add(new Failing(pattern, t, "")));
                return out;
            }
            if (fact != null && Logic.truth(p.condition(), fact, earlier) != Truth.TRUE) {
                p.condition()
                        .tests()
                        .filter(t -> Logic.truth(t, fact, earlier) != Truth.TRUE)
                        .forEach(t -> out.add(new Failing(pattern, t, String.valueOf(fact.value(t.field())))));
            }
            earlier.add(fact);
        }
        return out;
    }
}

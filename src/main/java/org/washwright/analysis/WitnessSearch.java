package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;

/**
 * Looks for a task on which rules fire. It starts from a task of which nothing is known and narrows what holds the rules,
 * as their undecided firings name it. Narrowing never takes back that a rule failed, so whatever failed is left at once.
 */
final class WitnessSearch {

    /** Undecided firings of a rule that are followed from one task. */
    private static final int FOLLOWED = 3;

    private final Edition edition;
    private final Space space;
    private final Choices choices;
    private final String asOf;
    private final int budget;

    /**
     * A search.
     *
     * @param budget most tasks tried for one question
     */
    WitnessSearch(Edition edition, Space space, Choices choices, String asOf, int budget) {
        this.edition = edition;
        this.space = space;
        this.choices = choices;
        this.asOf = asOf;
        this.budget = budget;
    }

    /** Date for which law is read, ISO 8601. */
    String asOf() {
        return asOf;
    }

    /** A task and what it made of the rules. */
    record Found(CleaningTask task, Probe.Seen seen) {}

    private record State(CleaningTask task, Probe.Seen seen, int open, int held, int order) {}

    /**
     * A task on which all of these rules fire.
     *
     * @param wanted what else must hold of it
     */
    Optional<Found> fires(List<Rule> rules, Predicate<Found> wanted) {
        return from(nothingKnown(rules), rules, wanted);
    }

    /** A task on which a rule fires that stands in the place of the edition's rule of the same id. */
    Optional<Found> fires(Rule rewritten, Predicate<Found> wanted) {
        List<Rule> rules = edition.rules().stream()
                .map(r -> r.id().equals(rewritten.id()) ? rewritten : r)
                .toList();
        return new WitnessSearch(edition.with(rules), space, choices, asOf, budget).fires(List.of(rewritten), wanted);
    }

    /** The same, starting from a task that leaves things open. */
    Optional<Found> from(CleaningTask start, List<Rule> rules, Predicate<Found> wanted) {
        Probe whole = Probe.of(edition, space, rules, asOf);
        Optional<Found> quick = Probe.onFewProcesses(edition, space, rules, asOf)
                .flatMap(few -> from(
                        start,
                        rules,
                        few,
                        found -> onWhole(found, rules, whole).filter(wanted).isPresent()))
                .flatMap(found -> onWhole(found, rules, whole));
        return quick.isPresent() ? quick : from(start, rules, whole, wanted);
    }

    /** The same task on every process; empty when it does not make all the rules fire there. */
    private static Optional<Found> onWhole(Found found, List<Rule> rules, Probe whole) {
        return whole.see(found.task())
                .filter(seen -> rules.stream().allMatch(r -> seen.fires(r.id())))
                .map(seen -> new Found(found.task(), seen));
    }

    private Optional<Found> from(CleaningTask start, List<Rule> rules, Probe probe, Predicate<Found> wanted) {
        PriorityQueue<State> open = new PriorityQueue<>(Comparator.comparingInt(State::open)
                .thenComparingInt(State::held)
                .thenComparingInt(State::order));
        Set<CleaningTask> known = new HashSet<>();
        push(start, rules, probe, open, known);
        while (!open.isEmpty() && probe.tries() < budget) {
            State state = open.poll();
            Found found = new Found(state.task(), state.seen());
            if (state.open() == 0) {
                if (wanted.test(found)) {
                    return Optional.of(found);
                }
                continue;
            }
            for (CleaningTask next : next(state, rules)) {
                if (probe.tries() < budget) {
                    push(next, rules, probe, open, known);
                }
            }
        }
        return Optional.empty();
    }

    private static CleaningTask nothingKnown(List<Rule> rules) {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        for (Group group : Group.values()) {
            // Of a group that applies only when it is given, silence would say too much.
            boolean asked = rules.stream()
                    .flatMap(r -> r.patterns().stream())
                    .anyMatch(p -> p.type().name().equals(group.factType())
                            || p.type().name().equals(FactTypes.CONCLUSION));
            if (group.appliesOnlyWhenGiven() && asked) {
                lists.put(group, new CleaningTask.Entries(List.of(Entry.EMPTY), false));
            }
        }
        String title = "Witness for "
                + String.join(" and ", rules.stream().map(Rule::id).toList());
        return new CleaningTask(title, "", lists, Map.of());
    }

    private void push(
            CleaningTask task, List<Rule> rules, Probe probe, PriorityQueue<State> open, Set<CleaningTask> known) {
        if (!known.add(task)) {
            return;
        }
        Optional<Probe.Seen> seen = probe.see(task);
        if (seen.isEmpty() || rules.stream().anyMatch(r -> seen.get().silent(r.id()))) {
            return;
        }
        int undecided =
                (int) rules.stream().filter(r -> !seen.get().fires(r.id())).count();
        int held = rules.stream()
                .filter(r -> !seen.get().fires(r.id()))
                .mapToInt(r -> undecided(seen.get(), r).get(0).held().size())
                .sum();
        open.add(new State(task, seen.get(), undecided, held, known.size()));
    }

    private static List<Firing> undecided(Probe.Seen seen, Rule rule) {
        return seen.firings().stream()
                .filter(f -> f.rule().id().equals(rule.id()))
                .sorted(Comparator.comparingInt((Firing f) -> f.held().size()))
                .toList();
    }

    /** Tasks that know one thing more of what holds the first rule that does not fire yet. */
    private List<CleaningTask> next(State state, List<Rule> rules) {
        Rule rule = rules.stream()
                .filter(r -> !state.seen().fires(r.id()))
                .findFirst()
                .orElseThrow();
        List<CleaningTask> out = new ArrayList<>();
        Set<String> refs = new HashSet<>();
        undecided(state.seen(), rule).stream().limit(FOLLOWED).forEach(f -> {
            // A rule is held by every one of these, so that any of them may be settled first.
            Optional<String> ref = Stream.concat(
                            f.held().stream(), behind(f, state.seen().facts()))
                    .filter(r -> canBeKnown(r, state.task()))
                    .findFirst();
            ref.filter(r -> refs.add(r)).ifPresent(r -> out.addAll(narrowed(state.task(), r)));
        });
        return out;
    }

    /** What the values that a firing read are made from: where the catalogue leaves a range, the rest may still decide. */
    private static Stream<String> behind(Firing firing, FactBase facts) {
        Set<String> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(firing.uses());
        while (!open.isEmpty()) {
            String ref = open.remove(open.size() - 1);
            if (found.add(ref)) {
                int slash = ref.lastIndexOf('/');
                facts.fact(ref.substring(0, Math.max(slash, 0)))
                        .ifPresent(fact -> fact.type()
                                .field(ref.substring(slash + 1))
                                .ifPresent(field -> {
                                    open.addAll(fact.origin(field).inputs());
                                    open.addAll(fact.origin(field).further());
                                }));
            }
        }
        return found.stream();
    }

    private boolean canBeKnown(String ref, CleaningTask task) {
        return Group.byKey(ref).isPresent()
                || TaskEdit.of(ref, edition)
                        .filter(e ->
                                e.in(task).map(g -> !g.value().isDefinite()).orElse(true))
                        .isPresent();
    }

    private List<CleaningTask> narrowed(CleaningTask task, String ref) {
        List<CleaningTask> out = new ArrayList<>();
        Optional<Group> group = Group.byKey(ref);
        if (group.isPresent() && group.get().isList()) {
            // What holds it may be that there is an entry, or that there is none: a conclusion in between hides which.
            List<Entry> entries = new ArrayList<>(task.entries(group.get()).entries());
            out.add(task.with(group.get(), new CleaningTask.Entries(entries, false)));
            if (entries.size() < group.get().cap()) {
                entries.add(Entry.EMPTY);
                out.add(task.with(group.get(), new CleaningTask.Entries(entries, false)));
                out.add(task.with(group.get(), new CleaningTask.Entries(entries, true)));
            }
            return out;
        }
        TaskEdit edit = TaskEdit.of(ref, edition).orElseThrow();
        for (Given given : choices.of(edit)) {
            out.add(edit.set(task, given));
        }
        return out;
    }
}

package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;

/** Pairs of rules that leave no value for a parameter on some task, without a third. */
final class Conflicts {

    /** Most tasks on which two rules meet that are looked at, and most processes on each: whole lines take long to compose. */
    private static final int MOST_LOOKED_AT = 30;

    private static final int MOST_PROCESSES = 6;

    private final Edition edition;
    private final Map<Set<String>, Assessor> assessors = new ConcurrentHashMap<>();
    private final Implication implication;
    private final BiFunction<Rule, Rule, List<WitnessSearch>> searches;

    Conflicts(Edition edition, Implication implication, BiFunction<Rule, Rule, List<WitnessSearch>> searches) {
        this.edition = edition;
        this.implication = implication;
        this.searches = searches;
    }

    /** True when two limits on the same parameter of the same stage leave nothing between them. */
    static boolean closed(Effect.Limit a, Effect.Limit b) {
        boolean same = a.max() != b.max()
                && a.parameter().equals(b.parameter())
                && a.stage().equals(b.stage());
        if (!same || !(a.bound() instanceof Effect.Bound.Literal x) || !(b.bound() instanceof Effect.Bound.Literal y)) {
            return false;
        }
        return a.max() ? x.si() < y.si() : y.si() < x.si();
    }

    private static boolean mayClose(Effect.Limit a, Effect.Limit b) {
        boolean literal = a.bound() instanceof Effect.Bound.Literal && b.bound() instanceof Effect.Bound.Literal;
        boolean same = a.max() != b.max()
                && a.parameter().equals(b.parameter())
                && a.stage().equals(b.stage());
        return literal ? closed(a, b) : same;
    }

    /** All findings among rules that can fire. */
    List<Finding> findings(List<Rule> alive) {
        List<Supplier<Optional<Finding>>> open = new ArrayList<>();
        for (int i = 0; i < alive.size(); i++) {
            for (int j = i + 1; j < alive.size(); j++) {
                Rule a = alive.get(i);
                Rule b = alive.get(j);
                open.add(() -> conflict(a, b));
            }
        }
        return open.parallelStream()
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Finding> conflict(Rule a, Rule b) {
        for (Effect x : a.effects()) {
            for (Effect y : b.effects()) {
                if (x instanceof Effect.Limit l && y instanceof Effect.Limit m && mayClose(l, m)) {
                    TreeSet<String> both = new TreeSet<>(implication.about(a, l.target()));
                    both.retainAll(implication.about(b, m.target()));
                    Optional<Finding> found = both.isEmpty()
                            ? Optional.empty()
                            : searches.apply(a, b).stream()
                                    .map(search -> shown(search, a, b, both, l))
                                    .flatMap(Optional::stream)
                                    .findFirst();
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Finding> shown(
            WitnessSearch search, Rule a, Rule b, TreeSet<String> processes, Effect.Limit limit) {
        Set<String> some = processes.stream().limit(MOST_PROCESSES).collect(Collectors.toCollection(TreeSet::new));
        int[] looked = {0};
        return search.fires(
                        List.of(a, b),
                        found -> looked[0]++ < MOST_LOOKED_AT
                                && process(found, search.asOf(), a, b, some).isPresent())
                .map(found -> {
                    String process = process(found, search.asOf(), a, b, some).orElseThrow();
                    String name = edition.catalogue().name("process", process);
                    return new Finding(
                            Finding.Kind.CONFLICT,
                            List.of(a.id(), b.id()),
                            a.place(),
                            a.id() + " and " + b.id() + " leave no " + limit.parameter() + " for " + name
                                    + " when both fire.",
                            Optional.of(found.task()),
                            search.asOf(),
                            Optional.empty());
                });
    }

    /** A process whose line falls out by these two rules and no other. */
    private Optional<String> process(WitnessSearch.Found found, String asOf, Rule a, Rule b, Set<String> processes) {
        Assessor assessor = assessors.computeIfAbsent(
                processes,
                some -> Assessor.of(
                        edition.with(edition.rules(), edition.catalogue().withProcesses(some)),
                        SweepInference.factory()));
        Outcome outcome;
        try {
            outcome = assessor.outcome(Variants.closed(found.task()), Wishes.on(asOf));
        } catch (RefusedTask e) {
            return Optional.empty();
        }
        return outcome.lines().stream()
                .filter(l -> processes.contains(l.process().id()))
                .filter(l -> l.refusals().stream().anyMatch(v -> by(outcome, v).equals(List.of(a.id(), b.id()))))
                .map(l -> l.process().id())
                .findFirst();
    }

    private static List<String> by(Outcome outcome, ProcessLine.Verdict verdict) {
        return List.copyOf(new TreeSet<>(outcome.firings().stream()
                .filter(f -> verdict.firings().contains(f.n()))
                .map(f -> f.rule().id())
                .toList()));
    }
}

package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.catalogue.Catalogue;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.engine.FactBase;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Firing;
import org.washwright.engine.Firings;
import org.washwright.engine.Inference;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Condition;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Levels;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.Value;

/** Tries tasks on a few rules and on what those hang on alone, and counts the tries. */
final class Probe {

    private static final int FEW = 4;

    private final Edition part;
    private final List<String> wanted;
    private final boolean lines;
    private final Wishes wishes;
    private final Value date;
    private final FactBuilder builder;
    private final Inference taskRules;
    private final Assessor assessor;
    private int tries;

    private Probe(
            Edition edition, Collection<Rule> cone, Optional<Set<String>> processes, List<Rule> rules, String asOf) {
        this.lines = rules.stream().anyMatch(Rule::isLineRule);
        Catalogue words = processes.map(edition.catalogue()::withProcesses).orElse(edition.catalogue());
        this.part = edition.with(List.copyOf(cone), words);
        this.wanted = rules.stream().map(Rule::id).toList();
        this.wishes = Wishes.on(asOf);
        this.date = Quantities.read(asOf, Dimension.DATE, Place.ofFile("-"), new Diagnostics())
                .map(Value::number)
                .orElse(Value.UNKNOWN);
        this.builder = new FactBuilder(part);
        this.taskRules = lines ? null : SweepInference.factory().prepare(part.taskRules(), part.levels(), part.types());
        this.assessor = lines ? Assessor.of(part, SweepInference.factory()) : null;
    }

    /**
     * A probe that tries tasks on every process that matters.
     *
     * @param space what facts of the edition can be
     * @param rules the rules looked at
     * @param asOf date for which law is read, ISO 8601
     */
    static Probe of(Edition edition, Space space, List<Rule> rules, String asOf) {
        Collection<Rule> cone = cone(edition, rules);
        return new Probe(edition, cone, processes(space, cone), rules, asOf);
    }

    /**
     * A probe that tries tasks on a few of the processes that all of these rules can match: much quicker, and most rules do not
     * care which. What it shows has to be seen on every process before it counts. Empty when there are but few processes.
     */
    static Optional<Probe> onFewProcesses(Edition edition, Space space, List<Rule> rules, String asOf) {
        Collection<Rule> cone = cone(edition, rules);
        Set<String> every = processes(space, cone).orElseGet(() -> {
            Set<String> all = new TreeSet<>();
            edition.catalogue().leaves().forEach(leaf -> all.add(leaf.id()));
            return all;
        });
        Set<String> shared = new TreeSet<>(every);
        rules.forEach(rule ->
                processes(space, List.of(rule)).filter(p -> !p.isEmpty()).ifPresent(shared::retainAll));
        List<String> from = List.copyOf(shared.isEmpty() ? every : shared);
        if (every.size() <= 2 * FEW) {
            return Optional.empty();
        }
        Set<String> few = new TreeSet<>();
        for (int i = 0; i < FEW; i++) {
            few.add(from.get(i * from.size() / FEW));
        }
        return Optional.of(new Probe(edition, cone, Optional.of(few), rules, asOf));
    }

    /**
     * What a task made of the rules.
     *
     * @param facts facts of the task, conclusions included
     * @param firings firings of the wanted rules alone
     */
    record Seen(FactBase facts, List<Firing> firings) {
        boolean fires(String rule) {
            return firings.stream().anyMatch(f -> f.certain() && f.rule().id().equals(rule));
        }

        boolean silent(String rule) {
            return firings.stream().noneMatch(f -> f.rule().id().equals(rule));
        }
    }

    /** Rules and all that they hang on: what concludes for them and, for rules over lines, what shapes a line. */
    private static Collection<Rule> cone(Edition edition, List<Rule> rules) {
        TreeSet<String> ids = new TreeSet<>();
        List<Rule> open = new ArrayList<>(rules);
        if (rules.stream().anyMatch(Rule::isLineRule)) {
            edition.rules().stream().filter(Probe::shapes).forEach(open::add);
        }
        TreeSet<String> known = new TreeSet<>();
        edition.rules().forEach(r -> known.addAll(Levels.concluded(r)));
        while (!open.isEmpty()) {
            Rule rule = open.remove(open.size() - 1);
            if (ids.add(rule.id())) {
                var matched = Levels.matched(rule, known);
                edition.rules().stream()
                        .filter(r -> Levels.concluded(r).stream().anyMatch(matched::contains))
                        .forEach(open::add);
            }
        }
        return edition.rules().stream().filter(r -> ids.contains(r.id())).toList();
    }

    /**
     * Processes that these rules can match at all; empty when that is every one. The others could only keep the probe busy:
     * what no process pattern may match, whatever the task, no rule ever matches.
     */
    private static Optional<Set<String>> processes(Space space, Collection<Rule> rules) {
        Set<String> out = new TreeSet<>();
        for (Rule rule : rules) {
            for (Pattern p : rule.patterns()) {
                boolean loose = Contact.byFactType(p.type().name()).isPresent()
                        && p.condition().tests().noneMatch(t -> t.operand() instanceof Condition.Operand.FactOf);
                if (loose) {
                    return Optional.empty();
                }
                if (p.type().name().equals(FactTypes.PROCESS)) {
                    out.addAll(space.processes(p.condition()));
                }
            }
        }
        return Optional.of(out);
    }

    private static boolean shapes(Rule rule) {
        return rule.effects().stream().anyMatch(e -> e instanceof Effect.Require || e instanceof Effect.RuleOut);
    }

    /** Tries a task; empty when its values contradict each other. */
    Optional<Seen> see(CleaningTask task) {
        tries++;
        if (lines) {
            try {
                Outcome outcome = assessor.outcome(task, wishes);
                return Optional.of(new Seen(outcome.facts(), wanted(outcome.firings())));
            } catch (RefusedTask e) {
                return Optional.empty();
            }
        }
        Diagnostics diagnostics = new Diagnostics();
        FactBase given = builder.build(task, Map.of(), date, diagnostics);
        if (diagnostics.hasErrors()) {
            return Optional.empty();
        }
        Inference.Inferred inferred = taskRules.run(given.all());
        FactBase facts = given.with(inferred.conclusions());
        return Optional.of(new Seen(facts, wanted(new Firings(part).of(inferred, facts, "", 1))));
    }

    private List<Firing> wanted(List<Firing> all) {
        return all.stream().filter(f -> wanted.contains(f.rule().id())).toList();
    }

    /** Tasks tried so far. */
    int tries() {
        return tries;
    }
}

package org.washwright.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.Finding;
import org.washwright.engine.Firing;
import org.washwright.engine.Firings;
import org.washwright.engine.Inference;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;

/**
 * Runs line rules over a line until they ask for no further stage. What placed a stage stays in the record, even when the
 * stage it placed has since made the rule silent; everything else counts only as it is at the end.
 */
final class LineRun {

    /** Most rounds; each round but the last adds a stage, and a line holds at most as many stages as a catalogue. */
    private static final int MAX_ROUNDS = 12;

    private final Inference lineRules;
    private final Firings resolver;
    private final FactBase facts;
    private final ProcessTerm process;
    private final StageFacts stageFacts;
    private final Sequence sequence;
    private final Map<String, Firing> placing = new LinkedHashMap<>();
    private int next;
    private boolean settled;

    LineRun(
            Inference lineRules,
            Firings resolver,
            FactBase facts,
            ProcessTerm process,
            StageFacts stageFacts,
            Sequence sequence,
            int firstFiring) {
        this.lineRules = lineRules;
        this.resolver = resolver;
        this.facts = facts;
        this.process = process;
        this.stageFacts = stageFacts;
        this.sequence = sequence;
        this.next = firstFiring;
    }

    /** The firings that count, in order of their numbers. */
    List<Firing> settle() {
        Map<String, Firing> round = Map.of();
        boolean changed = true;
        for (int i = 0; changed && i < MAX_ROUNDS; i++) {
            round = round();
            changed = false;
            for (Firing firing : round.values()) {
                changed |= place(firing);
            }
        }
        settled = !changed;
        Map<String, Firing> all = new HashMap<>(placing);
        all.putAll(round);
        return all.values().stream().sorted(Comparator.comparingInt(Firing::n)).toList();
    }

    /** False when the rules were still asking for stages after the last round. */
    boolean settled() {
        return settled;
    }

    /** The firings that asked for stages. */
    List<Firing> placing() {
        return placing.values().stream()
                .sorted(Comparator.comparingInt(Firing::n))
                .toList();
    }

    private boolean place(Firing firing) {
        boolean changed = false;
        for (Evidence<Effect.Require> e : Evidence.about(process.id(), List.of(firing), Effect.Require.class)) {
            changed |= sequence.add(e);
            placing.putIfAbsent(key(firing), onlyRequirements(firing));
        }
        return changed;
    }

    private Map<String, Firing> round() {
        List<Fact> shown = new ArrayList<>(facts.all());
        shown.removeIf(f -> f.type().name().equals(FactTypes.PROCESS) && !f.id().equals("process/" + process.id()));
        List<Step> steps = sequence.inOrder();
        shown.addAll(stageFacts.of(steps));
        Map<String, List<Firing>> placedBy = new HashMap<>();
        steps.forEach(s -> placedBy.put(
                stageFacts.id(s), s.reasons().stream().map(Evidence::firing).toList()));
        Map<String, Firing> out = new LinkedHashMap<>();
        for (Firing f : resolver.of(lineRules.run(shown), FactBase.of(shown), process.id(), next, placedBy)) {
            Firing before = placing.get(key(f));
            out.put(key(f), numbered(f, before == null ? next++ : before.n()));
        }
        return out;
    }

    private static Firing numbered(Firing f, int n) {
        return new Firing(n, f.rule(), f.level(), f.certain(), f.line(), f.facts(), f.uses(), f.held(), f.findings());
    }

    private static Firing onlyRequirements(Firing f) {
        List<Finding> kept = f.findings().stream()
                .filter(x -> x.effect() instanceof Effect.Require)
                .toList();
        return new Firing(f.n(), f.rule(), f.level(), f.certain(), f.line(), f.facts(), f.uses(), f.held(), kept);
    }

    private static String key(Firing f) {
        List<String> ids = f.facts().stream()
                .map((Optional<Fact> x) -> x.map(Fact::id).orElse("-"))
                .toList();
        return f.rule().id() + " " + f.certain() + " " + String.join(" ", ids);
    }
}

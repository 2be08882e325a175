package org.washwright.engine.sweep;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.engine.Conclusions;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.engine.Truth;
import org.washwright.rule.FactTypes;

/** One run over the facts of one task. */
final class Sweep {

    /** A fact in a node, as far as it is there. */
    private record Entry(Fact fact, Truth truth) {}

    private final Network network;
    private final FactTypes types;
    private final List<List<Entry>> memory;
    private final int[] met;
    private final BitSet[] ready;
    private final List<Match> matches = new ArrayList<>();
    private final Map<String, Fact> conclusions = new TreeMap<>();
    private final List<Fact> fresh = new ArrayList<>();

    @SuppressWarnings("unchecked")
    Sweep(Network network, FactTypes types) {
        this.network = network;
        this.types = types;
        this.memory = new ArrayList<>(java.util.Collections.nCopies(network.nodeCount(), (List<Entry>) null));
        this.met = new int[network.planCount()];
        this.ready = new BitSet[network.levels()];
    }

    Inference.Inferred run(List<Fact> facts) {
        network.always().forEach(this::ready);
        facts.forEach(this::enter);
        for (int level = 0; level < ready.length; level++) {
            if (ready[level] != null) {
                int from = matches.size();
                for (int n = ready[level].nextSetBit(0); n >= 0; n = ready[level].nextSetBit(n + 1)) {
                    match(network.plan(n));
                }
                conclude(from);
            }
        }
        return new Inference.Inferred(List.copyOf(matches), List.copyOf(conclusions.values()));
    }

    /** Puts a fact into every node that it meets. */
    private void enter(Fact fact) {
        NodeIndex index = network.index(fact.type().name());
        if (index != null) {
            index.candidates(fact, node -> {
                Truth truth = node.check().of(fact, null);
                Truth exists = fact.sure() ? truth : truth.and(Truth.UNDECIDED);
                if (exists != Truth.FALSE) {
                    List<Entry> there = memory.get(node.number());
                    if (there == null) {
                        there = new ArrayList<>(4);
                        memory.set(node.number(), there);
                        node.waiting().forEach(this::arrived);
                    }
                    there.add(new Entry(fact, exists));
                }
            });
        }
    }

    private void arrived(int plan) {
        if (++met[plan] == network.plan(plan).needed()) {
            ready(plan);
        }
    }

    private void ready(int plan) {
        int level = network.plan(plan).level();
        if (ready[level] == null) {
            ready[level] = new BitSet(network.planCount());
        }
        ready[level].set(plan);
    }

    /** What the matches of a level conclude becomes known to the levels above. */
    private void conclude(int from) {
        fresh.clear();
        for (Match match : matches.subList(from, matches.size())) {
            for (Fact fact : Conclusions.of(match, types)) {
                Fact known = conclusions.get(fact.id());
                if (known == null || !known.sure() && fact.sure()) {
                    conclusions.put(fact.id(), fact);
                    fresh.add(fact);
                }
            }
        }
        for (Fact fact : fresh) {
            // Of a conclusion that became sure within this level only the sure one enters.
            if (conclusions.get(fact.id()).sure() == fact.sure()) {
                leave(fact);
                enter(fact);
            }
        }
    }

    private void leave(Fact fact) {
        NodeIndex index = network.index(fact.type().name());
        if (index != null) {
            index.candidates(fact, node -> {
                List<Entry> there = memory.get(node.number());
                if (there != null) {
                    there.removeIf(e -> e.fact().equals(fact));
                }
            });
        }
    }

    private void match(Network.Plan plan) {
        int from = matches.size();
        match(plan, 0, new Fact[plan.steps().size()], Truth.TRUE);
        if (matches.size() - from > 1) {
            matches.subList(from, matches.size()).sort(Match.ORDER);
        }
    }

    private void match(Network.Plan plan, int index, Fact[] tuple, Truth soFar) {
        if (index == tuple.length) {
            matches.add(new Match(plan.rule(), optional(tuple), soFar == Truth.TRUE));
            return;
        }
        Network.Step step = plan.steps().get(index);
        List<Entry> there = memory.get(step.node().number());
        switch (step.sign()) {
            case NOT ->
                next(plan, index, tuple, soFar.and(exists(step, there, tuple).not()));
            case EXISTS -> next(plan, index, tuple, soFar.and(exists(step, there, tuple)));
            case POSITIVE -> {
                for (Entry entry : there) {
                    tuple[index] = entry.fact();
                    next(plan, index, tuple, soFar.and(truth(step, entry, tuple)));
                }
                tuple[index] = null;
            }
        }
    }

    private void next(Network.Plan plan, int index, Fact[] tuple, Truth truth) {
        if (truth != Truth.FALSE) {
            match(plan, index + 1, tuple, truth);
        }
    }

    private static Truth exists(Network.Step step, List<Entry> there, Fact[] tuple) {
        Truth exists = Truth.FALSE;
        if (there != null) {
            for (Entry entry : there) {
                exists = exists.or(truth(step, entry, tuple));
            }
        }
        return exists;
    }

    private static Truth truth(Network.Step step, Entry entry, Fact[] tuple) {
        return step.joins() ? entry.truth().and(step.join().of(entry.fact(), tuple)) : entry.truth();
    }

    private static List<Optional<Fact>> optional(Fact[] tuple) {
        List<Optional<Fact>> out = new ArrayList<>(tuple.length);
        for (Fact fact : tuple) {
            out.add(Optional.ofNullable(fact));
        }
        return out;
    }
}

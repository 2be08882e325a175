package org.washwright.engine.sweep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.washwright.engine.Fact;
import org.washwright.rule.Condition;
import org.washwright.rule.Op;
import org.washwright.task.Value;

/**
 * Finds the nodes of one fact type that a fact may meet. A node whose condition demands a term is filed under that term, so
 * a fact with another term never comes near it.
 */
final class NodeIndex {

    /** Nodes filed under terms of one field. */
    private static final class Filed {
        private final int slot;
        private final Map<String, List<Node>> byTerm = new HashMap<>();
        private final List<Node> all = new ArrayList<>();

        Filed(int slot) {
            this.slot = slot;
        }
    }

    private final List<Filed> files = new ArrayList<>();
    private final List<Node> others = new ArrayList<>();

    void add(Node node, Condition own) {
        Optional<Condition.Test> key = key(own);
        if (key.isEmpty()) {
            others.add(node);
            return;
        }
        int slot = key.get().field().slot();
        Filed file = files.stream().filter(f -> f.slot == slot).findFirst().orElseGet(() -> {
            Filed made = new Filed(slot);
            files.add(made);
            return made;
        });
        file.all.add(node);
        for (String term : ((Condition.Operand.Terms) key.get().operand()).ids()) {
            file.byTerm.computeIfAbsent(term, k -> new ArrayList<>()).add(node);
        }
    }

    /** The demanded comparison with the fewest terms. */
    private static Optional<Condition.Test> key(Condition own) {
        List<Condition> demanded = own instanceof Condition.All all ? all.parts() : List.of(own);
        return demanded.stream()
                .filter(c -> c instanceof Condition.Test t
                        && t.operand() instanceof Condition.Operand.Terms
                        && (t.op() == Op.EQ || t.op() == Op.IN))
                .map(Condition.Test.class::cast)
                .min(java.util.Comparator.comparingInt(
                        t -> ((Condition.Operand.Terms) t.operand()).ids().size()));
    }

    /** Every node that the fact may meet, at least; none that is filed under terms it can't have, and none twice. */
    void candidates(Fact fact, Consumer<Node> taker) {
        others.forEach(taker);
        for (Filed file : files) {
            Value value = fact.at(file.slot);
            if (value instanceof Value.Unknown) {
                file.all.forEach(taker);
            } else if (!(value instanceof Value.NotApplicable)) {
                terms(file, value, taker);
            }
        }
    }

    private static void terms(Filed file, Value value, Consumer<Node> taker) {
        java.util.Set<String> terms = Compared.terms(value);
        if (terms.size() == 1) {
            file.byTerm.getOrDefault(terms.iterator().next(), List.of()).forEach(taker);
            return;
        }
        java.util.Set<Node> found = new java.util.LinkedHashSet<>();
        terms.forEach(term -> found.addAll(file.byTerm.getOrDefault(term, List.of())));
        found.forEach(taker);
    }
}

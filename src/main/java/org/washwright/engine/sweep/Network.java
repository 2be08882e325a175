package org.washwright.engine.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.rule.Condition;
import org.washwright.rule.FactType;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/** The rules of an edition as nodes that share conditions. Immutable once made. */
final class Network {

    /** A pattern: the node its fact comes from, and what it has to meet beside earlier facts. */
    record Step(Sign sign, Node node, boolean joins, Check join) {}

    /**
     * A rule ready to run.
     *
     * @param rule the rule
     * @param level its place in the order of conclusions, from 0
     * @param steps its patterns
     * @param needed how many of them need a fact before the rule can match
     */
    record Plan(Rule rule, int level, List<Step> steps, int needed) {}

    private final List<Plan> plans = new ArrayList<>();
    private final List<Integer> always = new ArrayList<>();
    private final Map<String, NodeIndex> byType = new HashMap<>();
    private final Map<FactType, Map<Condition, Node>> nodes = new HashMap<>();
    private int nodeCount;
    private int levels;

    Network(List<Rule> rules, Map<String, Integer> levels) {
        // In the order of ids, so that matches come out in the order of answers.
        rules.stream().sorted(Comparator.comparing(Rule::id)).forEach(r -> add(r, levels.getOrDefault(r.id(), 0)));
        nodes.clear();
    }

    private void add(Rule rule, int level) {
        List<Step> steps = new ArrayList<>();
        int needed = 0;
        for (Pattern p : rule.patterns()) {
            Node node = node(p);
            Condition joining = Checks.joining(p.condition());
            steps.add(new Step(p.sign(), node, !joining.equals(Condition.ALWAYS), Checks.of(joining)));
            if (p.sign() != Sign.NOT) {
                node.waiting().add(plans.size());
                needed++;
            }
        }
        if (needed == 0) {
            always.add(plans.size());
        }
        plans.add(new Plan(rule, level, List.copyOf(steps), needed));
        levels = Math.max(levels, level + 1);
    }

    private Node node(Pattern p) {
        Condition own = Checks.own(p.condition());
        return nodes.computeIfAbsent(p.type(), k -> new HashMap<>()).computeIfAbsent(own, c -> {
            Node made = new Node(nodeCount++, Checks.of(c));
            byType.computeIfAbsent(p.type().name(), k -> new NodeIndex()).add(made, c);
            return made;
        });
    }

    Plan plan(int number) {
        return plans.get(number);
    }

    int planCount() {
        return plans.size();
    }

    int nodeCount() {
        return nodeCount;
    }

    /** One more than the highest level. */
    int levels() {
        return levels;
    }

    /** Rules that can match with no fact at all. */
    List<Integer> always() {
        return always;
    }

    /** Where the facts of a type go; null when no rule asks for that type. */
    NodeIndex index(String type) {
        return byType.get(type);
    }
}

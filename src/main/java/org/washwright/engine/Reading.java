package org.washwright.engine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.washwright.rule.Condition;
import org.washwright.rule.Contact;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.Pattern;
import org.washwright.rule.Sign;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Says of a match which values its conditions read, and which missing knowledge holds it. */
final class Reading {

    private final FactBase facts;
    private final Map<String, List<Firing>> concludedBy;

    /**
     * A reading.
     *
     * @param facts all facts, conclusions included
     * @param concludedBy firings of lower levels by the id of what they concluded
     */
    Reading(FactBase facts, Map<String, List<Firing>> concludedBy) {
        this.facts = facts;
        this.concludedBy = concludedBy;
    }

    /** References that the conditions read, in order. */
    List<String> uses(Match match) {
        Set<String> uses = new LinkedHashSet<>();
        List<Fact> tuple = tuple(match);
        for (int i = 0; i < match.rule().patterns().size(); i++) {
            Pattern p = match.rule().patterns().get(i);
            Fact fact = tuple.get(i);
            List<Fact> earlier = tuple.subList(0, i);
            if (fact != null) {
                uses(p, fact, earlier, uses);
                continue;
            }
            group(p.type().name()).ifPresent(uses::add);
            p.condition().tests().forEach(t -> compared(t, earlier, uses));
            if (p.sign() == Sign.EXISTS) {
                Truth wanted = match.certain() ? Truth.TRUE : Truth.UNDECIDED;
                facts.all().stream()
                        .filter(f -> ReferenceInterpreter.truth(p, f, earlier).compareTo(wanted) >= 0)
                        .forEach(f -> uses(p, f, earlier, uses));
            }
        }
        return List.copyOf(uses);
    }

    private static void uses(Pattern p, Fact fact, List<Fact> earlier, Set<String> uses) {
        if (p.type().name().equals(FactTypes.CONCLUSION)) {
            uses.add(fact.id());
        }
        deciding(p.condition(), fact, earlier).forEach(t -> {
            // Who meets whom is in the matched facts themselves and hangs on no value.
            if (!p.type().name().equals(FactTypes.CONCLUSION) && !(t.operand() instanceof Condition.Operand.FactOf)) {
                uses.add(fact.ref(t.field()));
            }
            compared(t, earlier, uses);
        });
    }

    private static void compared(Condition.Test test, List<Fact> earlier, Set<String> uses) {
        if (test.operand() instanceof Condition.Operand.FieldOf f) {
            uses.add(earlier.get(f.pattern()).ref(f.field()));
        }
    }

    /** The comparisons that a condition's truth rests on: of alternatives only those that are as true as the whole. */
    private static Stream<Condition.Test> deciding(Condition condition, Fact fact, List<Fact> earlier) {
        if (condition instanceof Condition.Test t) {
            return Stream.of(t);
        }
        if (condition instanceof Condition.All all) {
            return all.parts().stream().flatMap(c -> deciding(c, fact, earlier));
        }
        Truth truth = Logic.truth(condition, fact, earlier);
        return ((Condition.Any) condition)
                .parts().stream()
                        .filter(c -> Logic.truth(c, fact, earlier) == truth)
                        .flatMap(c -> deciding(c, fact, earlier));
    }

    /** References that hold an undecided match, in order. */
    List<String> held(Match match) {
        if (match.certain()) {
            return List.of();
        }
        TreeSet<String> held = new TreeSet<>();
        List<Fact> tuple = tuple(match);
        for (int i = 0; i < match.rule().patterns().size(); i++) {
            Pattern p = match.rule().patterns().get(i);
            List<Fact> earlier = tuple.subList(0, i);
            if (p.sign() == Sign.POSITIVE) {
                undecided(p, tuple.get(i), earlier, held);
            } else {
                for (Fact fact : facts.all()) {
                    if (ReferenceInterpreter.truth(p, fact, earlier) == Truth.UNDECIDED) {
                        undecided(p, fact, earlier, held);
                    }
                }
            }
        }
        return List.copyOf(held);
    }

    private void undecided(Pattern p, Fact fact, List<Fact> earlier, Set<String> held) {
        if (!fact.sure()) {
            existence(fact, held);
        }
        p.condition().tests().forEach(t -> {
            if (Logic.truth(t, fact, earlier) == Truth.UNDECIDED) {
                missing(fact, t.field(), held);
                if (t.operand() instanceof Condition.Operand.FieldOf f) {
                    missing(earlier.get(f.pattern()), f.field(), held);
                }
            }
        });
    }

    private void existence(Fact fact, Set<String> held) {
        if (isOpen(fact)) {
            group(fact.type().name()).ifPresent(held::add);
        }
        for (Firing f : concludedBy.getOrDefault(fact.id(), List.of())) {
            held.addAll(f.held());
        }
    }

    /** True for the fact that stands for what an open list may still hold. */
    private static boolean isOpen(Fact fact) {
        return !fact.sure() && group(fact.type().name()).isPresent();
    }

    /** What has to be found out so that a field is known: the field itself, or what it is made from. */
    private void missing(Fact fact, Field field, Set<String> held) {
        if (fact.value(field).isDefinite() || isOpen(fact)) {
            return;
        }
        if (fact.type().name().equals(FactTypes.STAGE)) {
            // Where a stage stands is open only as long as it is open whether others are there.
            facts.all().stream()
                    .filter(f -> !f.sure() && f.type().name().equals(FactTypes.STAGE))
                    .forEach(f -> existence(f, held));
            return;
        }
        Origin origin = fact.origin(field);
        if (origin.inputs().isEmpty()) {
            held.add(fact.ref(field));
            return;
        }
        int before = held.size();
        // Where one input is half known, narrowing that one is what to ask for; its equals would only repeat it.
        List<String> inputs = new ArrayList<>(origin.inputs());
        inputs.addAll(origin.further());
        boolean halfKnown = inputs.stream().anyMatch(this::halfKnown);
        for (String input : inputs) {
            if (!halfKnown || halfKnown(input)) {
                int slash = input.lastIndexOf('/');
                facts.fact(slash < 0 ? input : input.substring(0, slash))
                        .ifPresent(
                                f -> f.type().field(input.substring(slash + 1)).ifPresent(x -> missing(f, x, held)));
            }
        }
        if (held.size() == before) {
            // The inputs are known, but the catalogue or the formula leaves a range.
            held.add(origin.kind() == Origin.Kind.CATALOGUE ? origin.inputs().get(0) : fact.ref(field));
        }
    }

    /** Half known: given as a range or as one of several. */
    private boolean halfKnown(String ref) {
        int slash = ref.lastIndexOf('/');
        Optional<Fact> fact = facts.fact(slash < 0 ? ref : ref.substring(0, slash));
        return fact.flatMap(f -> f.type().field(ref.substring(slash + 1)).map(x -> f.value(x)))
                .map(v -> !v.isDefinite() && !(v instanceof Value.Unknown))
                .orElse(false);
    }

    /** Key of the list that facts of this type come from, what a process meets included. */
    private static Optional<String> group(String type) {
        return Group.byFactType(type)
                .or(() -> Contact.byFactType(type).map(Contact::group))
                .map(Group::key);
    }

    private static List<Fact> tuple(Match match) {
        List<Fact> tuple = new ArrayList<>();
        match.facts().forEach(f -> tuple.add(f.orElse(null)));
        return tuple;
    }
}

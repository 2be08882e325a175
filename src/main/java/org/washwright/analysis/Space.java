package org.washwright.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Term;
import org.washwright.document.Diagnostics;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Logic;
import org.washwright.engine.Origin;
import org.washwright.engine.Truth;
import org.washwright.quantity.Span;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/**
 * Everything that a fact of a type can be, as far as conditions can tell: each term of the catalogue, each process, and of
 * numbers each threshold and each gap between thresholds. What is computed is let run freely, so that a proof that
 * nothing fits holds, while that something fits has to be shown by a task.
 */
final class Space {

    /** Most situations looked at; beyond that nothing is decided. */
    private static final int MOST = 60_000;

    private final Edition edition;
    private final List<Fact> processes;

    Space(Edition edition) {
        this.edition = edition;
        CleaningTask nothing = new CleaningTask("nothing known", "", Map.of(), Map.of());
        this.processes = FactBuilder.build(nothing, edition, Map.of(), new Diagnostics()).all().stream()
                .filter(f -> f.type().name().equals(FactTypes.PROCESS))
                .toList();
    }

    /** True when surely no fact meets all of these. */
    boolean isEmpty(FactType type, List<Condition> conditions) {
        return situations(type, conditions)
                .map(all -> all.stream().allMatch(f -> conditions.stream().anyMatch(c -> truth(c, f) == Truth.FALSE)))
                .orElse(false);
    }

    /** True when surely every fact that meets {@code narrow} meets {@code wide}. */
    boolean implies(FactType type, Condition narrow, Condition wide) {
        return situations(type, List.of(narrow, wide))
                .map(all -> all.stream().allMatch(f -> truth(narrow, f) == Truth.FALSE || truth(wide, f) == Truth.TRUE))
                .orElse(false);
    }

    /** True when surely no fact that meets {@code some} meets {@code other}. */
    boolean excludes(FactType type, Condition some, Condition other) {
        return isEmpty(type, List.of(some, other));
    }

    /** Processes that may meet a condition. */
    Set<String> processes(Condition condition) {
        Set<String> out = new TreeSet<>();
        for (Fact f : processes) {
            if (truth(condition, f) != Truth.FALSE) {
                out.add(f.id().substring(f.id().indexOf('/') + 1));
            }
        }
        return out;
    }

    /** Truth of a condition; comparisons with other facts are left undecided. */
    static Truth truth(Condition condition, Fact fact) {
        if (condition instanceof Condition.Test t) {
            return isJoin(t) ? Truth.UNDECIDED : Logic.truth(t, fact, List.of());
        }
        boolean all = condition instanceof Condition.All;
        Truth truth = all ? Truth.TRUE : Truth.FALSE;
        for (Condition part : all ? ((Condition.All) condition).parts() : ((Condition.Any) condition).parts()) {
            Truth t = truth(part, fact);
            truth = all ? truth.and(t) : truth.or(t);
        }
        return truth;
    }

    static boolean isJoin(Condition.Test test) {
        return test.operand() instanceof Condition.Operand.FieldOf
                || test.operand() instanceof Condition.Operand.FactOf;
    }

    /** Every situation that these conditions tell apart; empty when there are too many. */
    private Optional<List<Fact>> situations(FactType type, List<Condition> conditions) {
        if (type.name().equals(FactTypes.PROCESS)) {
            return Optional.of(processes);
        }
        Map<String, Set<Field>> used = new TreeMap<>();
        Map<String, Set<Double>> thresholds = new TreeMap<>();
        conditions.stream().flatMap(Condition::tests).filter(t -> !isJoin(t)).forEach(t -> {
            used.computeIfAbsent(t.field().attribute(), k -> new LinkedHashSet<>())
                    .add(t.field());
            if (t.operand() instanceof Condition.Operand.Number n) {
                thresholds
                        .computeIfAbsent(t.field().name(), k -> new TreeSet<>())
                        .add(n.si());
            }
        });
        List<Map<Field, Value>> all = List.of(Map.of());
        for (Map.Entry<String, Set<Field>> e : used.entrySet()) {
            List<Map<Field, Value>> more = new ArrayList<>();
            for (Map<Field, Value> choice : choices(type, e.getKey(), e.getValue(), thresholds)) {
                for (Map<Field, Value> sofar : all) {
                    Map<Field, Value> both = new LinkedHashMap<>(sofar);
                    both.putAll(choice);
                    more.add(both);
                }
                if (more.size() > MOST) {
                    return Optional.empty();
                }
            }
            all = more;
        }
        return Optional.of(all.stream().map(values -> fact(type, values)).toList());
    }

    private static Fact fact(FactType type, Map<Field, Value> values) {
        List<Value> slots = type.fields().values().stream()
                .map(f -> values.getOrDefault(f, Value.UNKNOWN))
                .toList();
        return new Fact(
                "situation",
                type,
                "situation",
                true,
                slots,
                slots.stream().map(v -> Origin.NONE).toList());
    }

    /** What an attribute and the properties behind it can be together. */
    private Set<Map<Field, Value>> choices(
            FactType type, String attribute, Set<Field> used, Map<String, Set<Double>> thresholds) {
        Set<Map<Field, Value>> out = new LinkedHashSet<>();
        Map<Field, Value> nothing = new LinkedHashMap<>();
        used.forEach(f -> nothing.put(f, Value.NOT_APPLICABLE));
        out.add(nothing);
        Field first = used.iterator().next();
        FieldType base = type.field(attribute).map(Field::type).orElse(first.type());
        if (type.name().equals(FactTypes.STAGE) && attribute.equals("kind")) {
            base = FieldType.term("stage");
        }
        if (base instanceof FieldType.NumberType) {
            for (Value v : regions(thresholds.getOrDefault(first.name(), Set.of()))) {
                out.add(Map.of(first, v));
            }
        } else if (base instanceof FieldType.TermType t) {
            for (String id : terms(type, attribute, t)) {
                Map<Field, Value> values = new LinkedHashMap<>();
                used.forEach(f -> values.put(
                        f,
                        f.property().isEmpty()
                                ? Value.term(id)
                                : edition.catalogue()
                                        .term(t.kind(), id)
                                        .map((Term x) -> x.property(f.property()))
                                        .orElse(Value.UNKNOWN)));
                out.add(values);
            }
        } else {
            Map<Field, Value> free = new LinkedHashMap<>();
            used.forEach(f -> free.put(f, Value.UNKNOWN));
            out.add(free);
        }
        return out;
    }

    private Set<String> terms(FactType type, String attribute, FieldType.TermType t) {
        if (t.isFlag()) {
            return Set.of(FieldType.NO, FieldType.YES);
        }
        Catalogue catalogue = edition.catalogue();
        if (type.name().equals(FactTypes.STAGE) && (attribute.equals("id") || attribute.equals("kind"))) {
            // Only what some rule places can stand in a line, and the process itself.
            Set<String> placed = placed(edition.rules());
            if (attribute.equals("id")) {
                catalogue.leaves().forEach(p -> placed.add(p.id()));
            }
            return placed;
        }
        if (t.kind().equals(FactTypes.LINE_STAGE)) {
            Set<String> both = new TreeSet<>(catalogue.stages().keySet());
            both.addAll(catalogue.processes().keySet());
            return both;
        }
        return new TreeSet<>(edition.terms(t.kind()));
    }

    /** Stages that rules ask for. */
    static Set<String> placed(List<Rule> rules) {
        Set<String> placed = new TreeSet<>();
        rules.forEach(r -> r.effects().forEach(e -> {
            if (e instanceof Effect.Require q) {
                placed.add(q.stage());
            }
        }));
        return placed;
    }

    /** Each threshold and each gap, without the ends: doubles are discrete, so nothing is left out. */
    private static List<Value> regions(Set<Double> thresholds) {
        List<Value> out = new ArrayList<>();
        double low = Double.NEGATIVE_INFINITY;
        for (double t : new TreeSet<>(thresholds)) {
            if (low <= Math.nextDown(t)) {
                out.add(new Value.Number(new Span(low, Math.nextDown(t))));
            }
            out.add(Value.number(t));
            low = Math.nextUp(t);
        }
        out.add(new Value.Number(new Span(low, Double.POSITIVE_INFINITY)));
        return out;
    }
}

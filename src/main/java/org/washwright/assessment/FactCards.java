package org.washwright.assessment;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.engine.Conclusions;
import org.washwright.engine.Fact;
import org.washwright.engine.Firing;
import org.washwright.engine.Origin;
import org.washwright.engine.Words;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;

/** Shows facts with their attributes and origins: all that was said of the task, and of the rest what was read. */
final class FactCards {

    private final Words words;
    private final Set<String> used = new LinkedHashSet<>();
    private final Set<String> matched = new LinkedHashSet<>();
    private final Map<String, List<Integer>> concludedBy = new HashMap<>();

    /**
     * Cards.
     *
     * @param figures references of attributes that set points
     * @param placedBy firings that placed a stage, by the id of the stage's fact
     */
    FactCards(Edition edition, List<Firing> firings, Set<String> figures, Map<String, List<Integer>> placedBy) {
        concludedBy.putAll(placedBy);
        this.words = new Words(edition.catalogue());
        used.addAll(figures);
        figures.forEach(ref -> matched.add(ref.substring(0, ref.lastIndexOf('/'))));
        for (Firing f : firings) {
            used.addAll(f.uses());
            used.addAll(f.held());
            f.facts().forEach(x -> x.ifPresent(fact -> matched.add(fact.id())));
            f.findings().forEach(x -> {
                if (x.effect() instanceof org.washwright.rule.Effect.Conclude c) {
                    String subject = c.subject()
                            .map(i -> "/" + f.facts().get(i).orElseThrow().id())
                            .orElse("");
                    concludedBy
                            .computeIfAbsent(Conclusions.PREFIX + c.conclusion() + subject, k -> new ArrayList<>())
                            .add(f.n());
                }
            });
        }
    }

    List<Answer.Fact> of(List<Fact> facts) {
        useInputs(facts);
        List<Answer.Fact> out = new ArrayList<>();
        for (Fact fact : facts) {
            boolean ofTask = !isOfEdition(fact);
            if (ofTask || matched.contains(fact.id())) {
                List<Answer.Attribute> attributes = new ArrayList<>();
                fact.type().fields().values().stream()
                        .filter(f -> shown(fact, f, ofTask))
                        .forEach(f -> attributes.add(attribute(fact, f)));
                out.add(new Answer.Fact(
                        fact.id(),
                        fact.type().name(),
                        name(fact),
                        attributes,
                        concludedBy.getOrDefault(fact.id(), List.of())));
            }
        }
        return out;
    }

    /** What a used value was made from is used as well, down to what was given or read. */
    private void useInputs(List<Fact> facts) {
        Map<String, Fact> byId = new HashMap<>();
        facts.forEach(f -> byId.put(f.id(), f));
        Deque<String> open = new ArrayDeque<>(used);
        while (!open.isEmpty()) {
            String ref = open.poll();
            int slash = ref.lastIndexOf('/');
            Fact fact = byId.get(ref.substring(0, Math.max(slash, 0)));
            Field field = fact == null ? null : fact.type().fields().get(ref.substring(slash + 1));
            if (field != null) {
                fact.origin(field).inputs().stream().filter(used::add).forEach(open::add);
            }
        }
    }

    /** Processes, stages and what processes meet are there for every task; only those that a rule matched are shown. */
    private static boolean isOfEdition(Fact fact) {
        String type = fact.type().name();
        return type.equals(FactTypes.PROCESS)
                || type.equals(FactTypes.STAGE)
                || Contact.byFactType(type).isPresent();
    }

    /** What was used, and all that was said of the task; what nobody said and no rule asked is left out. */
    private boolean shown(Fact fact, Field field, boolean ofTask) {
        boolean path = !field.property().isEmpty();
        boolean said = fact.origin(field).kind() == Origin.Kind.GIVEN
                || fact.origin(field).kind() == Origin.Kind.TREE
                || fact.value(field).knowledge().equals("known")
                || fact.value(field).knowledge().equals("range");
        return used.contains(fact.ref(field)) || (!path && ofTask && said);
    }

    private String name(Fact fact) {
        if (!fact.type().name().equals(FactTypes.CONCLUSION)) {
            return fact.name();
        }
        return words.name("conclusion", fact.name());
    }

    private Answer.Attribute attribute(Fact fact, Field field) {
        Origin origin = fact.origin(field);
        boolean given = origin.kind() == Origin.Kind.GIVEN;
        String value = field.type() instanceof FieldType.FactType
                ? words.value(fact.value(field), field.type(), Words.COMPUTED)
                : words.value(fact.value(field), field.type(), given ? Words.GIVEN : Words.COMPUTED);
        return new Answer.Attribute(
                fact.ref(field),
                field.label(),
                value,
                fact.value(field).knowledge(),
                new Answer.Origin(
                        origin.kind().word(), origin.detail(), origin.inputs(), origin.source(), origin.warnings()));
    }
}

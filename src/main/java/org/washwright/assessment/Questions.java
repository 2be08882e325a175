package org.washwright.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.line.Evidence;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.ProcessFigures;
import org.washwright.task.Attribute;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Gathers what to find out first: what undecided firings hang on, and what rules ask for. */
final class Questions {

    private static final int NAMED = 3;

    private final Edition edition;
    private final FactBase facts;
    private final Map<Integer, Firing> firings = new HashMap<>();
    private final Map<String, TreeSet<Integer>> heldBy = new TreeMap<>();
    private final Map<String, TreeSet<String>> decides = new TreeMap<>();
    private final Map<String, List<String>> asked = new TreeMap<>();

    Questions(Edition edition, FactBase facts, List<Firing> all) {
        this.edition = edition;
        this.facts = facts;
        all.forEach(f -> firings.put(f.n(), f));
    }

    List<Answer.Question> of(List<ProcessLine> lines) {
        for (ProcessLine line : lines) {
            line.conditions()
                    .forEach(c -> c.firings()
                            .forEach(n -> firings.get(n).held().forEach(ref -> {
                                heldBy.computeIfAbsent(ref, k -> new TreeSet<>())
                                        .add(n);
                                decides.computeIfAbsent(ref, k -> new TreeSet<>())
                                        .add(line.process().term().name());
                            })));
        }
        for (Firing f : firings.values().stream()
                .sorted(Comparator.comparingInt(Firing::n))
                .toList()) {
            boolean moves = f.findings().stream()
                    .anyMatch(x -> x.effect() instanceof Effect.Score
                            && x.targets().stream().anyMatch(t -> standing(t, lines)));
            if (!f.certain() && moves) {
                f.held()
                        .forEach(ref -> heldBy.computeIfAbsent(ref, k -> new TreeSet<>())
                                .add(f.n()));
            }
        }
        Evidence.general(List.copyOf(firings.values()), Effect.Ask.class).stream()
                .sorted(Comparator.comparingInt(Evidence::n))
                .forEach(this::ask);
        List<Answer.Question> out = new ArrayList<>();
        Map<String, List<String>> alike = new LinkedHashMap<>();
        heldBy.keySet()
                .forEach(ref -> alike.computeIfAbsent(alike(ref), k -> new ArrayList<>())
                        .add(ref));
        alike.values().forEach(refs -> out.add(question(refs)));
        out.sort(Comparator.comparingInt(Answer.Question::decides)
                .thenComparingInt(q -> asked.containsKey(q.attribute()) ? 1 : 0)
                // Of what kinds of things there are is asked before what is done with them.
                .thenComparingInt(q -> Group.byKey(q.attribute()).isPresent() ? 1 : 0)
                .thenComparingInt(q -> q.firings().size())
                .reversed()
                .thenComparing(Answer.Question::attribute));
        return out;
    }

    /** What is asked of many processes on one entry of the task in the same words has one key. */
    private String alike(String ref) {
        int slash = ref.lastIndexOf('/');
        Optional<Fact> fact = facts.fact(ref.substring(0, Math.max(slash, 0)));
        Optional<Contact> contact =
                fact.flatMap(f -> Contact.byFactType(f.type().name()));
        return contact.flatMap(c ->
                        fact.get().type().field(c.field()).map(f -> fact.get().value(f)))
                .map(other -> contact.get() + " " + other + ref.substring(slash))
                .orElse(ref);
    }

    private Answer.Question question(List<String> refs) {
        TreeSet<Integer> numbers = new TreeSet<>();
        TreeSet<String> processes = new TreeSet<>();
        refs.forEach(ref -> {
            numbers.addAll(heldBy.get(ref));
            processes.addAll(decides.getOrDefault(ref, new TreeSet<>()));
        });
        String first = refs.get(0);
        return new Answer.Question(
                first,
                refs.size() == 1 ? question(first) : ofMany(refs),
                consequence(first, processes),
                List.copyOf(numbers),
                processes.size());
    }

    private String ofMany(List<String> refs) {
        String ref = refs.get(0);
        int slash = ref.lastIndexOf('/');
        Fact fact = facts.fact(ref.substring(0, slash)).orElseThrow();
        Contact contact = Contact.byFactType(fact.type().name()).orElseThrow();
        Value other = fact.value(fact.type().field(contact.field()).orElseThrow());
        String name = other instanceof Value.Reference r
                ? facts.fact(r.factId()).map(Fact::name).orElse(r.factId())
                : "";
        String question = attribute(fact.type().name(), ref.substring(slash + 1))
                .map(Attribute::question)
                .orElse(ref.substring(slash + 1));
        return refs.size() + " processes " + contact.preposition() + " " + name + ": " + question;
    }

    private static boolean standing(String process, List<ProcessLine> lines) {
        return lines.stream().anyMatch(l -> l.process().id().equals(process));
    }

    private void ask(Evidence<Effect.Ask> e) {
        for (String ref : refs(e)) {
            heldBy.computeIfAbsent(ref, k -> new TreeSet<>()).add(e.n());
            List<String> reasons = asked.computeIfAbsent(ref, k -> new ArrayList<>());
            if (!reasons.contains(e.finding().text())) {
                reasons.add(e.finding().text());
            }
        }
    }

    /** What a rule asks for, as far as it is not known: one reference per fact of the type that lacks it. */
    private List<String> refs(Evidence<Effect.Ask> e) {
        String type = e.effect().type();
        String attribute = e.effect().attribute();
        if (type.equals(FactTypes.ATTRIBUTE)) {
            return facts.fact("attributes/" + attribute)
                    .filter(f -> !f.value(f.type().field("value").orElseThrow()).isDefinite())
                    .map(f -> List.of(f.id() + "/value"))
                    .orElse(List.of());
        }
        Group group = Group.byFactType(type).orElseThrow();
        List<Fact> own =
                facts.all().stream().filter(f -> f.type().name().equals(type)).toList();
        boolean open = own.stream().anyMatch(f -> !f.sure());
        if (attribute.isEmpty()) {
            return open ? List.of(group.key()) : List.of();
        }
        List<String> refs = new ArrayList<>();
        for (Fact fact : own) {
            fact.type()
                    .field(attribute)
                    .filter(f -> fact.sure() && !fact.value(f).isDefinite())
                    .ifPresent(f -> refs.add(fact.ref(f)));
        }
        return refs.isEmpty() && open && own.size() == 1 ? List.of(group.key()) : refs;
    }

    /** How one asks for what a reference names. */
    String question(String ref) {
        Optional<Group> open = Group.byKey(ref);
        if (open.isPresent() && open.get().isList()) {
            boolean none = facts.all().stream()
                    .noneMatch(
                            f -> f.sure() && f.type().name().equals(open.get().factType()));
            return none
                    ? open.get().attributes().get(0).question()
                    : "Is there any " + open.get().label() + " besides those listed?";
        }
        int slash = ref.lastIndexOf('/');
        Optional<Fact> fact = facts.fact(ref.substring(0, Math.max(slash, 0)));
        String name = ref.substring(slash + 1);
        if (fact.isEmpty()) {
            return ref;
        }
        if (fact.get().id().startsWith("attributes/")) {
            return edition.catalogue()
                    .attributes()
                    .get(fact.get().id().substring("attributes/".length()))
                    .question();
        }
        String type = fact.get().type().name();
        Optional<Group> group = Group.byFactType(type);
        String question = attribute(type, name).map(Attribute::question).orElse(name);
        boolean single = group.isPresent() && !group.get().isList();
        return single ? question : Headlines.capital(fact.get().name()) + ": " + question;
    }

    private static Optional<Attribute> attribute(String type, String name) {
        Optional<Group> group = Group.byFactType(type);
        if (group.isPresent()) {
            return group.get().attribute(name);
        }
        List<Attribute> computed =
                Contact.byFactType(type).map(Contact::attributes).orElse(ProcessFigures.ALL);
        return computed.stream().filter(a -> a.name().equals(name)).findFirst();
    }

    /** A few processes by name, many by their number: nobody reads a list of twenty. */
    private static String decided(List<String> processes) {
        return processes.size() <= NAMED + 1
                ? "Decides on: " + String.join("; ", processes) + "."
                : "Decides on " + processes.size() + " processes, among them "
                        + String.join("; ", processes.subList(0, NAMED)) + ".";
    }

    private String consequence(String ref, TreeSet<String> processes) {
        List<String> said = new ArrayList<>(asked.getOrDefault(ref, List.of()));
        if (!processes.isEmpty()) {
            said.add(decided(List.copyOf(processes)));
        } else if (said.isEmpty()) {
            said.add("Moves points, decides on no process.");
        }
        return String.join(" ", said);
    }
}

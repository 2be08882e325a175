package org.washwright.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Setting;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.engine.derive.Derivation;
import org.washwright.engine.derive.Derivations;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.ProcessFigures;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Turns a task and an edition into facts: what was given, what the catalogue says of it, and what follows by formula. */
public final class FactBuilder {

    /** Start of the ids of processes. */
    static final String PROCESS = "process/";

    /** End of the id of the fact that stands for what an open list may still hold. */
    public static final String OPEN = "/*";

    /** Most terms by which an entry is called when it may be any of them; nobody reads a name of fifteen. */
    private static final int NAMED = 3;

    private final Edition edition;
    private final Map<String, Value> assumptions = new TreeMap<>();
    private final List<FactDraft> processes;
    private final Set<Contact> contacts;

    /** A builder for tasks by one edition, which reads once what the catalogue says. Safe for use by several threads at once. */
    public FactBuilder(Edition edition) {
        this.edition = edition;
        edition.assumptions().forEach((id, a) -> assumptions.put(id, a.value()));
        processes = edition.catalogue().leaves().stream().map(this::process).toList();
        contacts = ContactFacts.read(edition);
    }

    /** Builds the facts of one task when nobody says for which date. */
    public static FactBase build(
            CleaningTask task, Edition edition, Map<String, Value> changed, Diagnostics diagnostics) {
        return new FactBuilder(edition).build(task, changed, Value.UNKNOWN, diagnostics);
    }

    /**
     * Builds the facts.
     *
     * @param task the task
     * @param changed values of assumptions changed for this request, by id
     * @param asOf date the question is asked for, days since 1970-01-01
     * @param diagnostics takes contradictions between values
     */
    public FactBase build(CleaningTask task, Map<String, Value> changed, Value asOf, Diagnostics diagnostics) {
        Map<String, Value> taken = new TreeMap<>(assumptions);
        taken.putAll(changed);
        return new Building(task, taken, asOf, diagnostics).all();
    }

    /** What the catalogue alone says of a process. */
    private FactDraft process(ProcessTerm p) {
        FactDraft draft = new FactDraft(
                PROCESS + p.id(), edition.types().type(FactTypes.PROCESS).orElseThrow());
        Origin self = new Origin(Origin.Kind.CATALOGUE, p.term().name(), List.of(), "");
        for (Field field : draft.fields()) {
            if (field.name().equals("id")) {
                draft.set(field, Value.term(p.id()), self);
            } else if (field.name().equals("node")) {
                draft.set(field, new Value.AllOf(p.nodes()), self);
            } else if (field.property().isEmpty() && !isFigure(field)) {
                String source = p.term().sources().getOrDefault(field.name(), "");
                draft.set(
                        field,
                        p.term().property(field.name()),
                        new Origin(Origin.Kind.CATALOGUE, p.term().name(), List.of(), source));
            }
        }
        draft.paths(edition.catalogue());
        return draft;
    }

    private static boolean isFigure(Field field) {
        return ProcessFigures.ALL.stream().anyMatch(a -> a.name().equals(field.name()));
    }

    /** The facts of one task in the making. */
    private final class Building {
        private final CleaningTask task;
        private final Map<String, Value> taken;
        private final Value asOf;
        private final Diagnostics diagnostics;
        private final List<Fact> facts = new ArrayList<>();

        Building(CleaningTask task, Map<String, Value> taken, Value asOf, Diagnostics diagnostics) {
            this.task = task;
            this.taken = taken;
            this.asOf = asOf;
            this.diagnostics = diagnostics;
        }

        FactBase all() {
            for (Group group : Group.values()) {
                group(group);
            }
            edition.catalogue().attributes().keySet().forEach(this::declared);
            processes.forEach(this::process);
            facts.addAll(new ContactFacts(edition, contacts, taken).of(facts));
            return FactBase.of(facts);
        }

        private void group(Group group) {
            CleaningTask.Entries entries = task.entries(group);
            if (!group.isList()) {
                boolean silent = entries.entries().isEmpty() && group.appliesOnlyWhenGiven();
                facts.add(entry(group, group.key(), silent ? notApplicable(group) : task.single(group), true));
                return;
            }
            for (int i = 0; i < entries.entries().size(); i++) {
                facts.add(entry(group, group.key() + "/" + i, entries.entries().get(i), true));
            }
            if (entries.open()) {
                facts.add(entry(group, group.key() + OPEN, Entry.EMPTY, false));
            }
        }

        /** What silence says of a group that applies only when it is given. */
        private Entry notApplicable(Group group) {
            Map<String, Given> given = new TreeMap<>();
            group.attributes().stream()
                    .filter(a -> !a.computed())
                    .forEach(a ->
                            given.put(a.name(), Given.of(Value.NOT_APPLICABLE, "/" + group.key() + " is left out")));
            return new Entry(given);
        }

        private Fact entry(Group group, String id, Entry entry, boolean sure) {
            FactType type = edition.types().type(group.factType()).orElseThrow();
            FactDraft draft = new FactDraft(id, type);
            for (Field field : type.fields().values()) {
                if (field.property().isEmpty()
                        && !group.attribute(field.name()).orElseThrow().computed()) {
                    given(draft, field, Optional.ofNullable(entry.given().get(field.name())));
                }
            }
            draft.paths(edition.catalogue());
            if (group == Group.SITE) {
                Origin asked = asOf.isDefinite() ? new Origin(Origin.Kind.GIVEN, "/asOf", List.of(), "") : Origin.NONE;
                draft.set(draft.field("asOf"), asOf, asked);
            }
            derive(Derivations.of(group), inputs(draft, entry, Optional.empty()));
            return draft.fact(name(group, id, entry), sure);
        }

        private FormulaInputs inputs(FactDraft draft, Entry entry, Optional<Setting> setting) {
            return new FormulaInputs(draft, entry, setting, facts, taken, task, edition.catalogue());
        }

        private void derive(List<Derivation> formulas, FormulaInputs inputs) {
            FactDraft draft = inputs.draft();
            for (Derivation d : formulas) {
                Derivation.Computed computed = d.compute(inputs);
                draft.set(
                        draft.field(d.attribute()),
                        computed.value(),
                        Origin.computed(d.formula(), computed, d.source()));
                computed.contradiction()
                        .ifPresent(words ->
                                diagnostics.add(Message.CONTRADICTION, new Place("-", 0, 0, "/" + draft.id()), words));
            }
        }

        private void given(FactDraft draft, Field field, Optional<Given> given) {
            // Who writes that nothing is known says no more than who writes nothing, and asks the same.
            boolean said = given.filter(g -> !(g.value() instanceof Value.Unknown)
                            || !g.treePath().isEmpty())
                    .isPresent();
            if (!said) {
                draft.set(field, Value.UNKNOWN, Origin.NONE);
                return;
            }
            Given g = given.get();
            Origin origin = g.treePath().isEmpty()
                    ? new Origin(Origin.Kind.GIVEN, g.pointer(), List.of(), "")
                    : g.overruled()
                            ? new Origin(Origin.Kind.GIVEN, g.pointer() + "; overrules " + g.treePath(), List.of(), "")
                            : new Origin(Origin.Kind.TREE, g.treePath(), List.of(), "");
            draft.set(field, g.value(), origin);
        }

        private String name(Group group, String id, Entry entry) {
            if (id.endsWith(OPEN)) {
                return "a further " + group.label();
            }
            if (!group.isList()) {
                return "the " + group.label();
            }
            Value first = entry.value(group.attributes().get(0).name());
            FieldType type = group.attributes().get(0).type();
            return first instanceof Value.OneOf o && o.terms().size() <= NAMED && type instanceof FieldType.TermType t
                    ? FactDraft.names(edition.catalogue(), t.kind(), o.terms())
                    : group.label() + " " + (Integer.parseInt(id.substring(id.indexOf('/') + 1)) + 1);
        }

        private void declared(String id) {
            FactType type = edition.types().type(FactTypes.declared(id)).orElseThrow();
            FactDraft draft = new FactDraft("attributes/" + id, type);
            given(
                    draft,
                    type.field("value").orElseThrow(),
                    Optional.ofNullable(task.declared().get(id)));
            draft.paths(edition.catalogue());
            facts.add(draft.fact(edition.catalogue().attributes().get(id).label(), true));
        }

        private void process(FactDraft known) {
            FactDraft draft = known.copy();
            ProcessTerm term = edition.catalogue().processes().get(draft.id().substring(PROCESS.length()));
            derive(Derivations.ofProcess(), inputs(draft, Entry.EMPTY, Optional.of(term.setting())));
            facts.add(draft.fact(term.term().name(), true));
        }
    }
}

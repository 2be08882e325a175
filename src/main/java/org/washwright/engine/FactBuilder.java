package org.washwright.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.engine.derive.Derivation;
import org.washwright.engine.derive.Derivations;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Turns a task and an edition into facts: what was given, what the catalogue says of it, and what follows by formula. */
public final class FactBuilder {

    /** End of the id of the fact that stands for what an open list may still hold. */
    public static final String OPEN = "/*";

    private final Edition edition;
    private final Map<String, Value> assumptions;
    private final Diagnostics diagnostics;
    private final List<Fact> facts = new ArrayList<>();

    private FactBuilder(Edition edition, Map<String, Value> assumptions, Diagnostics diagnostics) {
        this.edition = edition;
        this.assumptions = assumptions;
        this.diagnostics = diagnostics;
    }

    /**
     * Builds the facts.
     *
     * @param task the task
     * @param edition the edition
     * @param changed values of assumptions changed for this request, by id
     * @param diagnostics takes contradictions between values
     */
    public static FactBase build(
            CleaningTask task, Edition edition, Map<String, Value> changed, Diagnostics diagnostics) {
        Map<String, Value> assumptions = new java.util.TreeMap<>();
        edition.assumptions().forEach((id, a) -> assumptions.put(id, a.value()));
        assumptions.putAll(changed);
        FactBuilder builder = new FactBuilder(edition, assumptions, diagnostics);
        for (Group group : Group.values()) {
            builder.group(task, group);
        }
        edition.catalogue().attributes().keySet().forEach(id -> builder.declared(task, id));
        edition.catalogue().leaves().forEach(builder::process);
        return FactBase.of(builder.facts);
    }

    private void group(CleaningTask task, Group group) {
        CleaningTask.Entries entries = task.entries(group);
        if (!group.isList()) {
            facts.add(entry(group, group.key(), task.single(group), true));
            return;
        }
        for (int i = 0; i < entries.entries().size(); i++) {
            facts.add(entry(group, group.key() + "/" + i, entries.entries().get(i), true));
        }
        if (entries.open()) {
            facts.add(entry(group, group.key() + OPEN, Entry.EMPTY, false));
        }
    }

    private Fact entry(Group group, String id, Entry entry, boolean sure) {
        FactType type = edition.types().type(group.factType()).orElseThrow();
        Partial partial = new Partial(id, type);
        for (Field field : type.fields().values()) {
            if (field.property().isEmpty()
                    && !group.attribute(field.name()).orElseThrow().computed()) {
                given(partial, field, Optional.ofNullable(entry.given().get(field.name())));
            }
        }
        for (Derivation d : Derivations.of(group)) {
            Field field = type.field(d.attribute()).orElseThrow();
            Derivation.Computed computed = d.compute(new Inputs(partial, entry));
            partial.set(
                    field,
                    computed.value(),
                    new Origin(Origin.Kind.COMPUTED, d.formula(), computed.inputs(), d.source()));
            computed.contradiction()
                    .ifPresent(words -> diagnostics.add(Message.CONTRADICTION, new Place("-", 0, 0, "/" + id), words));
        }
        partial.paths(edition.catalogue());
        return partial.fact(name(group, id, entry), sure);
    }

    private static void given(Partial partial, Field field, Optional<Given> given) {
        if (given.isEmpty()) {
            partial.set(field, Value.UNKNOWN, Origin.NONE);
            return;
        }
        Given g = given.get();
        Origin origin = g.treePath().isEmpty()
                ? new Origin(Origin.Kind.GIVEN, g.pointer(), List.of(), "")
                : g.overruled()
                        ? new Origin(Origin.Kind.GIVEN, g.pointer() + "; overrules " + g.treePath(), List.of(), "")
                        : new Origin(Origin.Kind.TREE, g.treePath(), List.of(), "");
        partial.set(field, g.value(), origin);
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
        return first instanceof Value.OneOf o && type instanceof FieldType.TermType t
                ? names(edition.catalogue(), t.kind(), o.terms())
                : group.label() + " " + (Integer.parseInt(id.substring(id.indexOf('/') + 1)) + 1);
    }

    static String names(Catalogue catalogue, String kind, SortedSet<String> terms) {
        return String.join(
                " or ", terms.stream().map(t -> catalogue.name(kind, t)).toList());
    }

    private void declared(CleaningTask task, String id) {
        FactType type = edition.types().type(FactTypes.declared(id)).orElseThrow();
        Partial partial = new Partial("attributes/" + id, type);
        given(
                partial,
                type.field("value").orElseThrow(),
                Optional.ofNullable(task.declared().get(id)));
        partial.paths(edition.catalogue());
        facts.add(partial.fact(edition.catalogue().attributes().get(id).label(), true));
    }

    private void process(ProcessTerm p) {
        FactType type = edition.types().type(FactTypes.PROCESS).orElseThrow();
        Partial partial = new Partial("process/" + p.id(), type);
        Origin self = new Origin(Origin.Kind.CATALOGUE, p.term().name(), List.of(), "");
        for (Field field : type.fields().values()) {
            if (field.name().equals("id")) {
                partial.set(field, Value.term(p.id()), self);
            } else if (field.name().equals("node")) {
                partial.set(field, new Value.AllOf(p.nodes()), self);
            } else if (field.property().isEmpty()) {
                String source = p.term().sources().getOrDefault(field.name(), "");
                partial.set(
                        field,
                        p.term().property(field.name()),
                        new Origin(Origin.Kind.CATALOGUE, p.term().name(), List.of(), source));
            }
        }
        partial.paths(edition.catalogue());
        facts.add(partial.fact(p.term().name(), true));
    }

    /** A fact in the making. */
    static final class Partial {
        private final String id;
        private final FactType type;
        private final Value[] values;
        private final Origin[] origins;

        Partial(String id, FactType type) {
            this.id = id;
            this.type = type;
            this.values = new Value[type.fields().size()];
            this.origins = new Origin[values.length];
        }

        void set(Field field, Value value, Origin origin) {
            values[field.slot()] = value;
            origins[field.slot()] = origin;
        }

        Value get(String name) {
            return values[type.field(name).orElseThrow().slot()];
        }

        /** Fills the fields behind a dot from the catalogue. */
        void paths(Catalogue catalogue) {
            for (Field field : type.fields().values()) {
                if (!field.property().isEmpty()) {
                    Field base = type.field(field.attribute()).orElseThrow();
                    String kind = ((FieldType.TermType) base.type()).kind();
                    Value value = values[base.slot()];
                    set(
                            field,
                            property(catalogue, kind, value, field.property()),
                            origin(catalogue, kind, base, value, field));
                }
            }
        }

        private Origin origin(Catalogue catalogue, String kind, Field base, Value value, Field field) {
            SortedSet<String> sources = new TreeSet<>();
            String detail = "";
            if (value instanceof Value.OneOf o) {
                detail = names(catalogue, kind, o.terms());
                o.terms()
                        .forEach(t -> catalogue
                                .term(kind, t)
                                .map(x -> x.sources().get(field.property()))
                                .ifPresent(sources::add));
            }
            return new Origin(
                    Origin.Kind.CATALOGUE, detail, List.of(id + "/" + base.name()), String.join("; ", sources));
        }

        Fact fact(String name, boolean sure) {
            return new Fact(id, type, name, sure, List.of(values), List.of(origins));
        }
    }

    /** What all possible terms say of a property, taken together. */
    static Value property(Catalogue catalogue, String kind, Value term, String property) {
        if (!(term instanceof Value.OneOf o)) {
            return term instanceof Value.NotApplicable ? Value.NOT_APPLICABLE : Value.UNKNOWN;
        }
        List<Value> all = o.terms().stream()
                .map(t -> catalogue.term(kind, t).map(x -> x.property(property)).orElse(Value.UNKNOWN))
                .toList();
        return all.stream().skip(1).reduce(all.get(0), FactBuilder::hull);
    }

    private static Value hull(Value a, Value b) {
        if (a.equals(b)) {
            return a;
        }
        if (a instanceof Value.Number x && b instanceof Value.Number y) {
            Span hull = x.span().hull(y.span());
            return new Value.Number(hull);
        }
        if (a instanceof Value.OneOf x && b instanceof Value.OneOf y) {
            TreeSet<String> both = new TreeSet<>(x.terms());
            both.addAll(y.terms());
            return Value.oneOf(both);
        }
        // One of them may have no such property: then nothing is certain.
        return Value.UNKNOWN;
    }

    /** What a formula may read. */
    private final class Inputs implements Derivation.Inputs {
        private final Partial partial;
        private final Entry entry;

        Inputs(Partial partial, Entry entry) {
            this.partial = partial;
            this.entry = entry;
        }

        @Override
        public Value own(String attribute) {
            return partial.get(attribute);
        }

        @Override
        public String code(String attribute) {
            Given given = entry.given().get(attribute);
            return given == null ? "" : given.code();
        }

        @Override
        public Value given(String attribute) {
            return entry.value(attribute);
        }

        @Override
        public Value of(Group group, String attribute) {
            return facts.stream()
                    .filter(f -> f.id().equals(group.key()))
                    .findFirst()
                    .flatMap(f -> f.type().field(attribute).map(f::value))
                    .orElse(Value.UNKNOWN);
        }

        @Override
        public Value assumption(String id) {
            return assumptions.getOrDefault(id, Value.UNKNOWN);
        }

        @Override
        public String ref(String attribute) {
            return partial.id + "/" + attribute;
        }
    }
}

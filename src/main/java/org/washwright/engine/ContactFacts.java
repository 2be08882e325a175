package org.washwright.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.Term;
import org.washwright.engine.contact.ContactFormula;
import org.washwright.engine.contact.ContactFormulas;
import org.washwright.engine.derive.Derivation;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.Value;

/** Makes a fact of every process with every entry of the task that it meets, for those kinds of meeting that some rule reads. */
final class ContactFacts {

    private final Edition edition;
    private final Set<Contact> read;
    private final Map<String, Value> assumptions;

    /**
     * Meetings of one task.
     *
     * @param read the kinds of meeting to make, as {@link #read}
     */
    ContactFacts(Edition edition, Set<Contact> read, Map<String, Value> assumptions) {
        this.edition = edition;
        this.read = read;
        this.assumptions = assumptions;
    }

    List<Fact> of(List<Fact> facts) {
        List<Fact> out = new ArrayList<>();
        List<Fact> processes = ofType(facts, FactTypes.PROCESS);
        for (Contact contact : read) {
            for (Fact other : ofType(facts, contact.group().factType())) {
                processes.forEach(p -> out.add(meeting(contact, p, other)));
            }
        }
        return out;
    }

    /** Meetings that some rule reads: the others would be made for nothing, in each of thousands of tasks. */
    static Set<Contact> read(Edition edition) {
        Set<Contact> read = EnumSet.noneOf(Contact.class);
        edition.rules()
                .forEach(r -> r.patterns()
                        .forEach(p -> Contact.byFactType(p.type().name()).ifPresent(read::add)));
        return read;
    }

    private static List<Fact> ofType(List<Fact> facts, String type) {
        return facts.stream().filter(f -> f.type().name().equals(type)).toList();
    }

    private Fact meeting(Contact contact, Fact process, Fact other) {
        FactType type = edition.types().type(contact.factType()).orElseThrow();
        FactDraft draft = new FactDraft(contact.factType() + "/" + process.id() + "/" + other.id(), type);
        Origin met = new Origin(Origin.Kind.COMPUTED, "they meet", List.of(), "");
        draft.set(type.field("process").orElseThrow(), new Value.Reference(process.id()), met);
        draft.set(type.field(contact.field()).orElseThrow(), new Value.Reference(other.id()), met);
        Meeting meeting = new Meeting(process, other);
        for (ContactFormula formula : ContactFormulas.of(contact)) {
            Derivation.Computed computed = formula.compute(meeting);
            draft.set(
                    type.field(formula.attribute()).orElseThrow(),
                    computed.value(),
                    Origin.computed(formula.formula(), computed, formula.source()));
        }
        String name = process.name() + " " + contact.preposition() + " " + other.name();
        return draft.fact(name, other.sure());
    }

    /** What a formula may read of the two that meet. */
    private final class Meeting implements ContactFormula.Meeting {
        private final Fact process;
        private final Fact other;

        Meeting(Fact process, Fact other) {
            this.process = process;
            this.other = other;
        }

        @Override
        public Value process(String field) {
            return value(process, field);
        }

        @Override
        public Value other(String field) {
            return value(other, field);
        }

        @Override
        public Value highest(String parameter) {
            String id = process.id().substring(FactBuilder.PROCESS.length());
            Optional<Setting> setting =
                    Optional.ofNullable(edition.catalogue().processes().get(id)).map(p -> p.setting());
            return FormulaInputs.highest(setting, parameter);
        }

        @Override
        public Value assumption(String id) {
            return assumptions.getOrDefault(id, Value.UNKNOWN);
        }

        @Override
        public Collection<Term> terms(String kind) {
            return edition.catalogue().ofKind(kind).values();
        }

        @Override
        public String processRef(String field) {
            return process.id() + "/" + field;
        }

        @Override
        public String otherRef(String field) {
            return other.id() + "/" + field;
        }

        private static Value value(Fact fact, String name) {
            Optional<Field> field = fact.type().field(name);
            return field.map(fact::value).orElse(Value.NOT_APPLICABLE);
        }
    }
}

package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.cases.CaseReader;
import org.washwright.document.Diagnostics;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Logic;
import org.washwright.rule.Condition;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactType;
import org.washwright.rule.Field;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * Proves that a limit on a computed figure may be moved without any task noticing, by going through every value that the
 * figure can have. That can be done where it hangs on the catalogue and on one thing more: a term, or the size classes of a
 * component cleanliness code, of which there are thirteen.
 */
final class FiniteProof {

    /** Attributes of which {@link #tasks} goes through every value. */
    private static final Set<String> CHOICES = Set.of("particleCode", "kind", "substrate");

    private final Edition edition;

    FiniteProof(Edition edition) {
        this.edition = edition;
    }

    /** Why the two rules, which differ in one limit, fire on the same facts; empty when that is not shown here. */
    Optional<String> of(Rule was, Rule is) {
        for (int i = 0; i < was.patterns().size(); i++) {
            Pattern pattern = was.patterns().get(i);
            List<Condition.Test> a = pattern.condition().tests().toList();
            List<Condition.Test> b = is.patterns().get(i).condition().tests().toList();
            for (int j = 0; j < a.size() && a.size() == b.size(); j++) {
                if (!a.get(j).equals(b.get(j))
                        && a.get(j).field().type() instanceof FieldType.NumberType
                        && a.get(j).field().equals(b.get(j).field())) {
                    return same(pattern.type(), a.get(j), b.get(j));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> same(FactType type, Condition.Test a, Condition.Test b) {
        int looked = 0;
        for (CleaningTask task : tasks(type)) {
            FactBase facts = new FactBuilder(edition).build(task, Map.of(), Value.UNKNOWN, new Diagnostics());
            for (Fact fact : facts.all()) {
                if (!fact.type().equals(type) || fact.id().endsWith(FactBuilder.OPEN)) {
                    continue;
                }
                if (!finite(fact, a.field(), facts)
                        || Logic.truth(a, fact, List.of()) != Logic.truth(b, fact, List.of())) {
                    return Optional.empty();
                }
                looked++;
            }
        }
        return looked == 0
                ? Optional.empty()
                : Optional.of("the figure hangs on the catalogue and on one choice; on all " + looked
                        + " values that it can have the two limits decide alike");
    }

    /** Tasks that make every choice that a figure of this type may hang on. */
    private List<CleaningTask> tasks(FactType type) {
        Optional<Contact> contact = Contact.byFactType(type.name());
        List<CleaningTask> out = new ArrayList<>();
        if (contact.isPresent()) {
            Group group = contact.get().group();
            Attribute kind = group.attributes().get(0);
            edition.terms(((FieldType.TermType) kind.type()).kind())
                    .forEach(id -> out.add(task(group, kind.name(), Given.of(Value.term(id), ""))));
            return out;
        }
        Attribute code = Group.DEMAND.attributes().stream()
                .filter(a -> a.name().equals("particleCode"))
                .findFirst()
                .orElseThrow();
        new Choices(edition)
                .of(new TaskEdit(Optional.of(Group.DEMAND), -1, code))
                .forEach(given -> out.add(task(Group.DEMAND, code.name(), given)));
        return out;
    }

    private static CleaningTask task(Group group, String attribute, Given given) {
        Entry entry = new Entry(Map.of(attribute, given));
        return new CleaningTask(
                CaseReader.FOLDER, "", Map.of(group, new CleaningTask.Entries(List.of(entry), false)), Map.of());
    }

    /** True when all that a figure is made of is the catalogue's, a process's, or the one choice. */
    private static boolean finite(Fact fact, Field field, FactBase facts) {
        List<String> open = new ArrayList<>(fact.origin(field).inputs());
        if (open.isEmpty()) {
            return false;
        }
        while (!open.isEmpty()) {
            String ref = open.remove(open.size() - 1);
            int slash = ref.lastIndexOf('/');
            String name = ref.substring(slash + 1);
            Optional<Fact> from = facts.fact(ref.substring(0, Math.max(slash, 0)));
            Optional<Field> source = from.flatMap(f -> f.type().field(name));
            if (source.isEmpty()) {
                return false;
            }
            // A dot leads from a term to its property in the catalogue.
            boolean choice = CHOICES.contains(name) || name.contains(".");
            boolean process = from.get().id().startsWith("process/");
            List<String> inputs = from.get().origin(source.get()).inputs();
            if (!choice && !process && inputs.isEmpty()) {
                return false;
            }
            open.addAll(inputs);
        }
        return true;
    }
}

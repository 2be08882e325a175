package org.washwright.generate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBuilder;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Makes up tasks of which everything is known: each attribute has one value or is not applicable, and each list is whole. */
public final class KnownTask {

    /** Hardness and strength of four grades of steel that agree within the scatter of conversion, by attribute. */
    private static final Map<String, List<String>> GRADES = Map.of(
            "hardness", List.of("20", "31", "40", "60"),
            "vickersHardness", List.of("240", "310", "392", "697"),
            "tensileStrength", List.of("770", "1000", "1265", "2180"));

    /** Day the question is asked for, days since 1970-01-01. */
    private static final long ASKED = LocalDate.parse("2024-02-29").toEpochDay();

    private final Random random;
    private final Edition edition;

    private KnownTask(Random random, Edition edition) {
        this.random = random;
        this.edition = edition;
    }

    /** The facts of some task. */
    public static List<Fact> facts(Random random, Edition edition) {
        CleaningTask task = new KnownTask(random, edition).task();
        Diagnostics diagnostics = new Diagnostics();
        List<Fact> facts = new FactBuilder(edition)
                .build(task, Map.of(), Value.number(ASKED), diagnostics)
                .all();
        if (diagnostics.hasErrors()) {
            throw new AssertionError(diagnostics.all().toString());
        }
        facts.forEach(f -> f.type().fields().values().forEach(field -> {
            if (!f.sure() || !f.value(field).isDefinite()) {
                throw new AssertionError(f.ref(field) + " is not known: " + f.value(field));
            }
        }));
        return facts;
    }

    private CleaningTask task() {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        for (Group group : Group.values()) {
            List<Entry> entries = new ArrayList<>();
            int count = group.isList() ? random.nextInt(4) : 1;
            for (int i = 0; i < count; i++) {
                entries.add(entry(group));
            }
            lists.put(group, new CleaningTask.Entries(entries, false));
        }
        Map<String, Given> declared = new TreeMap<>();
        edition.catalogue().attributes().forEach((id, a) -> declared.put(id, given(a, random.nextInt(6))));
        return new CleaningTask("generated", "", lists, declared);
    }

    private Entry entry(Group group) {
        Map<String, Given> given = new TreeMap<>();
        // One grade for all three scales: given on each of them, what is computed of them is one value and no range.
        int grade = random.nextInt(5);
        for (Attribute a : group.attributes()) {
            if (!a.computed()) {
                boolean number = a.type() instanceof FieldType.NumberType;
                boolean scale = group == Group.MATERIALS && number;
                // A hole without any width is none: what is computed of it would be refused and so not known.
                int least = group == Group.FEATURES && number ? 1 : 0;
                given.put(a.name(), given(a, scale ? grade : least + random.nextInt(6 - least)));
            }
        }
        return new Entry(given);
    }

    /** The value at a place of the grid, or not applicable beyond it. */
    private Given given(Attribute attribute, int place) {
        if (attribute.type() instanceof FieldType.CodeType type) {
            // One code only: whether the particles of one code meet another may not be decidable.
            String code = Grid.codes(type.code()).get(0);
            return place < 3 ? new Given(Value.term(code), "", "", false, code) : Given.of(Value.NOT_APPLICABLE, "");
        }
        return Given.of(value(attribute.name(), attribute.type(), place).orElse(Value.NOT_APPLICABLE), "");
    }

    private Optional<Value> value(String name, FieldType type, int place) {
        if (type instanceof FieldType.NumberType n) {
            List<String> grid = GRADES.getOrDefault(name, Grid.of(n.dimension()));
            return place >= grid.size()
                    ? Optional.empty()
                    : Optional.of(Value.number(Grid.si(n.dimension(), grid.get(place))));
        }
        FieldType.TermType term = (FieldType.TermType) type;
        List<String> ids = term.isFlag()
                ? List.of(FieldType.NO, FieldType.YES)
                : edition.terms(term.kind()).stream().sorted().limit(3).toList();
        // Which way a hole points always applies: where it is not said, any way is possible.
        boolean applies = name.equals("mouth") || random.nextInt(7) > 0;
        return !applies ? Optional.empty() : Optional.of(Value.term(ids.get(random.nextInt(ids.size()))));
    }
}

package org.washwright.generate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Makes up tasks with every kind of knowledge and lack of it, and narrows what is known. */
public final class TaskMaker {

    private final Random random;
    private final Edition edition;

    /** A maker for the words of an edition. */
    public TaskMaker(Random random, Edition edition) {
        this.random = random;
        this.edition = edition;
    }

    /** A task with one thing narrowed, and what it was. */
    public record Narrowed(CleaningTask task, String what) {}

    /** Some task. */
    public CleaningTask task() {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        for (Group group : Group.values()) {
            if (!group.isList()) {
                lists.put(group, new CleaningTask.Entries(List.of(entry(group, 0)), false));
            } else if (random.nextInt(6) > 0) {
                List<Entry> entries = new ArrayList<>();
                int count = random.nextInt(4);
                for (int i = 0; i < count; i++) {
                    entries.add(entry(group, i));
                }
                lists.put(group, new CleaningTask.Entries(entries, random.nextInt(3) == 0));
            }
        }
        Map<String, Given> declared = new TreeMap<>();
        edition.catalogue().attributes().forEach((id, a) -> {
            if (random.nextBoolean()) {
                declared.put(id, Given.of(value(a.type(), true), "/attributes/" + id));
            }
        });
        return new CleaningTask("generated", "", lists, declared);
    }

    private Entry entry(Group group, int index) {
        Map<String, Given> given = new TreeMap<>();
        boolean hardness = false;
        for (Attribute a : group.attributes()) {
            // Of the three scales of hardness mostly one is given, else nearly every task would contradict itself.
            boolean scale = group == Group.MATERIALS && a.type() instanceof FieldType.NumberType;
            if (!a.computed() && random.nextInt(4) > 0 && !(scale && hardness && random.nextInt(10) > 0)) {
                hardness |= scale;
                given.put(a.name(), given(a, pointer(group, index, a.name()), true));
            }
        }
        return new Entry(given);
    }

    private static String pointer(Group group, int index, String attribute) {
        return "/" + group.key() + (group.isList() ? "/" + index : "") + "/" + attribute;
    }

    private Given given(Attribute attribute, String pointer, boolean unknownToo) {
        if (attribute.type() instanceof FieldType.CodeType type) {
            String code = Grid.codes(type.code()).get(random.nextInt(3));
            return switch (random.nextInt(unknownToo ? 5 : 4)) {
                case 0 -> Given.of(Value.NOT_APPLICABLE, pointer);
                case 4 -> Given.of(Value.UNKNOWN, pointer);
                default -> new Given(Value.term(code), pointer, "", false, code);
            };
        }
        return Given.of(value(attribute.type(), unknownToo), pointer);
    }

    private Value value(FieldType type, boolean unknownToo) {
        int form = random.nextInt(12);
        if (form == 0) {
            return Value.NOT_APPLICABLE;
        }
        if (form == 1 && unknownToo) {
            return Value.UNKNOWN;
        }
        if (type instanceof FieldType.NumberType n) {
            return new Value.Number(span(n.dimension()));
        }
        List<String> ids = ids(((FieldType.TermType) type).kind());
        TreeSet<String> some = new TreeSet<>();
        for (int i = 0; i <= (form > 8 ? 1 + random.nextInt(2) : 0); i++) {
            some.add(ids.get(random.nextInt(ids.size())));
        }
        return Value.oneOf(some);
    }

    private List<String> ids(String kind) {
        Collection<String> ids = kind.equals(FieldType.FLAG) ? List.of("no", "yes") : edition.terms(kind);
        return ids.stream().sorted().toList();
    }

    private Span span(Dimension dimension) {
        double a = amount(dimension);
        double b = amount(dimension);
        return switch (random.nextInt(6)) {
            case 0, 1 -> new Span(Math.min(a, b), Math.max(a, b));
            case 2 -> new Span(a, Double.POSITIVE_INFINITY);
            case 3 -> new Span(Quantities.lowest(dimension), Math.max(a, Quantities.lowest(dimension)));
            default -> Span.of(a);
        };
    }

    private double amount(Dimension dimension) {
        List<String> grid = Grid.of(dimension);
        return Grid.si(dimension, grid.get(random.nextInt(grid.size())));
    }

    /** A task that says more than this one; empty when the place tried has nothing left to say. */
    public Optional<Narrowed> narrower(CleaningTask task) {
        int attributes = edition.catalogue().attributes().size();
        int at = random.nextInt(Group.values().length + (attributes == 0 ? 0 : 1));
        if (at == Group.values().length) {
            return narrowerDeclared(task);
        }
        Group group = Group.values()[at];
        CleaningTask.Entries entries = task.entries(group);
        if (group.isList() && entries.open() && random.nextInt(3) == 0) {
            return Optional.of(new Narrowed(
                    task.with(group, new CleaningTask.Entries(entries.entries(), false)), "closed " + group.key()));
        }
        if (group.isList() && entries.entries().isEmpty()) {
            return Optional.empty();
        }
        List<Entry> list = new ArrayList<>(entries.entries().isEmpty() ? List.of(Entry.EMPTY) : entries.entries());
        int index = random.nextInt(list.size());
        List<Attribute> own =
                group.attributes().stream().filter(a -> !a.computed()).toList();
        Attribute attribute = own.get(random.nextInt(own.size()));
        Value old = list.get(index).value(attribute.name());
        String pointer = pointer(group, index, attribute.name());
        Optional<Given> narrower = narrower(attribute, old, pointer);
        return narrower.map(g -> {
            Map<String, Given> given = new TreeMap<>(list.get(index).given());
            given.put(attribute.name(), g);
            list.set(index, new Entry(given));
            return new Narrowed(
                    task.with(group, new CleaningTask.Entries(list, entries.open())),
                    pointer + " from " + old + " to " + g.value());
        });
    }

    private Optional<Narrowed> narrowerDeclared(CleaningTask task) {
        List<String> ids = List.copyOf(edition.catalogue().attributes().keySet());
        String id = ids.get(random.nextInt(ids.size()));
        Given old = task.declared().get(id);
        Value value = old == null ? Value.UNKNOWN : old.value();
        return narrower(edition.catalogue().attributes().get(id), value, "/attributes/" + id)
                .map(g -> {
                    Map<String, Given> declared = new TreeMap<>(task.declared());
                    declared.put(id, g);
                    return new Narrowed(
                            new CleaningTask(task.title(), task.notes(), task.lists(), declared),
                            id + " from " + value + " to " + g.value());
                });
    }

    private Optional<Given> narrower(Attribute attribute, Value old, String pointer) {
        if (old instanceof Value.Unknown) {
            return Optional.of(given(attribute, pointer, false));
        }
        if (old instanceof Value.Number n && !n.span().isPoint()) {
            return Optional.of(Given.of(
                    new Value.Number(within(n.span(), ((FieldType.NumberType) attribute.type()).dimension())),
                    pointer));
        }
        if (old instanceof Value.OneOf o && o.terms().size() > 1) {
            List<String> terms = new ArrayList<>(o.terms());
            terms.remove(random.nextInt(terms.size()));
            return Optional.of(Given.of(Value.oneOf(terms), pointer));
        }
        return Optional.empty();
    }

    private Span within(Span span, Dimension dimension) {
        List<Double> points = new ArrayList<>(List.of(span.low(), span.high()));
        for (String amount : Grid.of(dimension)) {
            double si = Grid.si(dimension, amount);
            if (span.low() <= si && si <= span.high()) {
                points.add(si);
            }
        }
        double a = points.get(random.nextInt(points.size()));
        double b = points.get(random.nextInt(points.size()));
        Span out = new Span(Math.min(a, b), Math.max(a, b));
        return Double.isInfinite(out.low()) && Double.isInfinite(out.high()) && out.isPoint() ? span : out;
    }

    /** A task with one or a few things changed to anything. */
    public CleaningTask mutated(CleaningTask task) {
        CleaningTask out = task;
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            Group group = Group.values()[random.nextInt(Group.values().length)];
            CleaningTask.Entries entries = out.entries(group);
            List<Entry> list = new ArrayList<>(entries.entries());
            if (list.isEmpty() || (group.isList() && random.nextInt(4) == 0)) {
                list.add(entry(group, list.size()));
            } else {
                int index = random.nextInt(list.size());
                List<Attribute> own =
                        group.attributes().stream().filter(a -> !a.computed()).toList();
                Attribute a = own.get(random.nextInt(own.size()));
                Map<String, Given> given = new TreeMap<>(list.get(index).given());
                given.put(a.name(), given(a, pointer(group, index, a.name()), true));
                list.set(index, new Entry(given));
            }
            boolean open = group.isList() && random.nextInt(3) == 0;
            out = out.with(group, new CleaningTask.Entries(list, open));
        }
        return out;
    }
}

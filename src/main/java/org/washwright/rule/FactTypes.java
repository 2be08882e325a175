package org.washwright.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.quantity.Dimension;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** All fact types of an edition: those of the task, and processes, conclusions, stages and declared attributes. */
public record FactTypes(Map<String, FactType> byName) {

    /** Fact type of processes. */
    public static final String PROCESS = "Process";
    /** Fact type of conclusions. */
    public static final String CONCLUSION = "Conclusion";
    /** Fact type of composed stages. */
    public static final String STAGE = "Stage";
    /** Fact type of attributes that the edition declares, as rules write it. */
    public static final String ATTRIBUTE = "Attribute";
    /** Kind of the ids of stages within a line: stages and processes. */
    public static final String LINE_STAGE = "line-stage";

    private static final int PROCESS_CAP = 200;
    private static final int CONCLUSION_CAP = 100;
    private static final int STAGE_CAP = 30;

    /** Keeps an ordered copy. */
    public FactTypes {
        byName = Collections.unmodifiableMap(new TreeMap<>(byName));
    }

    /** The fact types that an edition with this catalogue has. */
    public static FactTypes of(Catalogue catalogue) {
        Map<String, FactType> types = new TreeMap<>();
        for (Group group : Group.values()) {
            List<Field> fields = new ArrayList<>();
            for (Attribute a : group.attributes()) {
                fields.add(new Field(a.name(), a.label(), a.type(), 0));
                fields.addAll(paths(catalogue, a.name(), a.label(), a.type()));
            }
            types.put(group.factType(), FactType.of(group.factType(), group.cap(), fields));
        }
        types.put(PROCESS, process(catalogue));
        types.put(STAGE, stage(catalogue));
        for (Contact contact : Contact.values()) {
            types.put(contact.factType(), contact.type(PROCESS_CAP));
        }
        types.put(
                CONCLUSION,
                FactType.of(
                        CONCLUSION,
                        CONCLUSION_CAP,
                        List.of(
                                new Field("id", "conclusion", FieldType.term("conclusion"), 0),
                                new Field("subject", "subject", new FieldType.FactType(), 0))));
        catalogue.attributes().forEach((id, a) -> {
            List<Field> fields = new ArrayList<>();
            fields.add(new Field("value", a.label(), a.type(), 0));
            fields.addAll(paths(catalogue, "value", a.label(), a.type()));
            types.put(declared(id), FactType.of(declared(id), 1, fields));
        });
        return new FactTypes(types);
    }

    /** Name of the fact type of a declared attribute. */
    public static String declared(String attributeId) {
        return ATTRIBUTE + "/" + attributeId;
    }

    /** Name of a term of a kind that fields can have; stages of a line are stages or processes. */
    public static String name(Catalogue catalogue, String kind, String term) {
        if (!kind.equals(LINE_STAGE)) {
            return catalogue.name(kind, term);
        }
        return catalogue.term("stage", term).isPresent()
                ? catalogue.name("stage", term)
                : catalogue.name("process", term);
    }

    /** The type with this name. */
    public Optional<FactType> type(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    private static FactType process(Catalogue catalogue) {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field("id", "process", FieldType.term("process"), 0));
        fields.add(new Field("node", "group of processes", FieldType.term("process"), 0));
        ProcessFigures.ALL.forEach(a -> fields.add(new Field(a.name(), a.label(), a.type(), 0)));
        Kind kind = catalogue.kinds().get("process");
        if (kind != null) {
            kind.properties().values().stream().filter(p -> !isFigure(p.id())).forEach(p -> {
                fields.add(new Field(p.id(), p.label(), p.type(), 0));
                fields.addAll(paths(catalogue, p.id(), p.label(), p.type()));
            });
        }
        return FactType.of(PROCESS, PROCESS_CAP, fields);
    }

    private static boolean isFigure(String name) {
        return ProcessFigures.ALL.stream().anyMatch(a -> a.name().equals(name));
    }

    private static FactType stage(Catalogue catalogue) {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field("id", "stage", FieldType.term(LINE_STAGE), 0));
        fields.add(new Field("main", "main cleaning", FieldType.flag(), 0));
        fields.add(new Field("cleaning", "removes soil", FieldType.flag(), 0));
        fields.add(new Field("position", "position", FieldType.number(Dimension.RATIO), 0));
        fields.add(new Field("count", "number of stages", FieldType.number(Dimension.RATIO), 0));
        fields.add(new Field("next", "next stage", FieldType.term(LINE_STAGE), 0));
        fields.add(new Field("previous", "stage before", FieldType.term(LINE_STAGE), 0));
        fields.addAll(paths(catalogue, "kind", "stage", FieldType.term("stage")));
        return FactType.of(STAGE, STAGE_CAP, fields);
    }

    private static List<Field> paths(Catalogue catalogue, String name, String label, FieldType type) {
        if (!(type instanceof FieldType.TermType t)
                || t.isFlag()
                || catalogue.kinds().get(t.kind()) == null) {
            return List.of();
        }
        return catalogue.kinds().get(t.kind()).properties().values().stream()
                .map(p -> new Field(name + "." + p.id(), p.label() + " of the " + label, p.type(), 0))
                .toList();
    }
}

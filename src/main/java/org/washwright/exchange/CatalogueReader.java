package org.washwright.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Parameter;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Similar;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;

/** Reads the files under {@code catalogue/}: first kinds, then terms, then what refers to terms. */
final class CatalogueReader {

    private final Diagnostics diagnostics;
    private final Set<String> sourceIds;
    private final Map<String, Kind> kinds = new TreeMap<>();
    private final Map<String, Map<String, Term>> terms = new TreeMap<>();
    private final Map<String, Parameter> parameters = new TreeMap<>();
    private final Map<String, String> cautions = new TreeMap<>();
    private final Map<String, String> blindSpots = new TreeMap<>();

    /** A term with the map it was read from, for its extra keys. */
    private record Raw(Term term, MapReader map) {}

    private final Map<String, List<Raw>> raw = new LinkedHashMap<>();

    CatalogueReader(Diagnostics diagnostics, Map<String, Edition.Source> sources) {
        this.diagnostics = diagnostics;
        this.sourceIds = sources.keySet();
    }

    Catalogue read(List<Node> documents) {
        KindReader kindReader = new KindReader(diagnostics);
        kinds.putAll(kindReader.read(documents));
        List<Node> termFiles = documents.stream().filter(n -> has(n, "kind")).toList();
        // Ids come first, so that a property may name a term of a later file.
        Map<String, Set<String>> ids = ids(termFiles);
        termFiles.forEach(n -> terms(n, ids));
        raw.getOrDefault("parameter", List.of()).forEach(this::parameter);
        raw.getOrDefault("hazard", List.of())
                .forEach(r -> cautions.put(r.term().id(), r.map().required("caution")));
        raw.getOrDefault("test-method", List.of())
                .forEach(r -> blindSpots.put(r.term().id(), r.map().text("blindTo")));
        Map<String, StageTerm> stages = stages();
        Map<String, ProcessTerm> processes = new ProcessTreeReader(diagnostics, this::setting)
                .read(raw.getOrDefault("process", List.of()).stream()
                        .map(r -> new ProcessTreeReader.Raw(r.term(), r.map()))
                        .toList());
        Map<String, Attribute> attributes = new TreeMap<>();
        documents.stream().filter(n -> has(n, "attributes")).forEach(n -> attributes(n, kindReader, attributes));
        documents.stream()
                .filter(n -> !has(n, "kinds") && !has(n, "kind") && !has(n, "attributes"))
                .forEach(n -> diagnostics.add(Message.MISSING_FIELD, n.place(), "", "a catalogue file", "kind"));
        raw.values().forEach(list -> list.forEach(r -> r.map().noMore()));
        terms.values().forEach(ofKind -> Successors.check(ofKind, diagnostics));
        return new Catalogue(kinds, terms, processes, stages, parameters, cautions, blindSpots, attributes);
    }

    static boolean has(Node node, String key) {
        return node instanceof Node.MapNode m && m.get(key).isPresent();
    }

    private Map<String, Set<String>> ids(List<Node> files) {
        Map<String, Set<String>> ids = new HashMap<>();
        for (Node file : files) {
            String kind = ((Node.MapNode) file).get("kind").map(Node::shown).orElse("");
            if (((Node.MapNode) file).get("terms").orElse(null) instanceof Node.ListNode list) {
                list.items().forEach(item -> {
                    if (item instanceof Node.MapNode m) {
                        ids.computeIfAbsent(kind, k -> new TreeSet<>())
                                .add(m.get("id").map(Node::shown).orElse(""));
                    }
                });
            }
        }
        return ids;
    }

    private void terms(Node node, Map<String, Set<String>> ids) {
        MapReader file = MapReader.of(node, "a catalogue file", diagnostics);
        String kindId = file.required("kind");
        Kind kind = kinds.get(kindId);
        if (kind == null) {
            diagnostics.add(Message.UNKNOWN_KIND, node.place(), kindId, Similar.advice(kindId, kinds.keySet()));
            return;
        }
        Map<String, Term> ofKind = terms.computeIfAbsent(kindId, k -> new TreeMap<>());
        PropertyReader properties = new PropertyReader(ids, sourceIds, diagnostics);
        for (Node item : file.list("terms")) {
            MapReader map = MapReader.of(item, "a term of kind " + kindId, diagnostics);
            PropertyReader.Read read = properties.read(kind, map.entries("properties"));
            Term term = new Term(
                    kindId,
                    map.id("id"),
                    map.required("name"),
                    map.text("definition"),
                    map.texts("synonyms"),
                    map.text("replacedBy"),
                    read.values(),
                    read.sources(),
                    item.place());
            Term other = ofKind.putIfAbsent(term.id(), term);
            if (other != null) {
                diagnostics.add(Message.DUPLICATE_ID, item.place(), term.id(), kindId, other.place());
            }
            raw.computeIfAbsent(kindId, k -> new ArrayList<>()).add(new Raw(term, map));
        }
        file.noMore();
    }

    private void parameter(Raw r) {
        MapReader map = r.map();
        String quantity = map.required("quantity");
        String unit = map.text("unit");
        String scaleText = map.required("scale");
        String factor = map.required("factor");
        Optional<Dimension> dimension = Dimension.byId(quantity);
        if (dimension.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_DIMENSION, map.place(), quantity, Similar.advice(quantity, Dimension.ids()));
            return;
        }
        if (!unit.isEmpty() && !Quantities.isUnitOf(unit, dimension.get())) {
            diagnostics.add(
                    Message.WRONG_DIMENSION,
                    map.place(),
                    unit,
                    dimension.get().label(),
                    dimension.get().example());
        }
        if (!Catalogue.FACTORS.contains(factor)) {
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    map.place(),
                    factor,
                    "cleaning factor",
                    Similar.advice(factor, Catalogue.FACTORS));
        }
        Quantities.readSpan(scaleText, dimension.get(), map.place(), diagnostics)
                .ifPresent(scale ->
                        parameters.put(r.term().id(), new Parameter(r.term(), dimension.get(), scale, factor)));
    }

    private Map<String, StageTerm> stages() {
        Map<String, StageTerm> stages = new TreeMap<>();
        List<Raw> list = raw.getOrDefault("stage", List.of());
        Set<String> ids = new TreeSet<>(list.stream().map(r -> r.term().id()).toList());
        for (Raw r : list) {
            List<String> alternatives = r.map().texts("alternatives");
            alternatives.stream()
                    .filter(a -> !ids.contains(a))
                    .forEach(a ->
                            diagnostics.add(Message.UNKNOWN_TERM, r.map().place(), a, "stage", Similar.advice(a, ids)));
            r.map().required("position");
            stages.put(
                    r.term().id(),
                    new StageTerm(
                            r.term(),
                            (int) r.map().number("position", StageTerm.MAIN),
                            r.map().flag("cleaning"),
                            setting(r.map()),
                            alternatives));
        }
        return stages;
    }

    private Setting setting(MapReader map) {
        Map<String, String> factors = new TreeMap<>();
        for (Node.Entry e : map.entries("factors")) {
            if (Catalogue.FACTORS.contains(e.key())) {
                factors.put(e.key(), e.value().shown());
            } else {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        e.keyPlace(),
                        e.key(),
                        "cleaning factor",
                        Similar.advice(e.key(), Catalogue.FACTORS));
            }
        }
        Map<String, Span> windows = new TreeMap<>();
        for (Node.Entry e : map.entries("windows")) {
            Parameter parameter = parameters.get(e.key());
            if (parameter == null) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        e.keyPlace(),
                        e.key(),
                        "parameter",
                        Similar.advice(e.key(), parameters.keySet()));
            } else {
                Quantities.readSpan(
                                e.value().shown(),
                                parameter.dimension(),
                                e.value().place(),
                                diagnostics)
                        .ifPresent(s -> windows.put(e.key(), s));
            }
        }
        return new Setting(map.text("phrase"), factors, windows);
    }

    private void attributes(Node node, KindReader types, Map<String, Attribute> attributes) {
        MapReader file = MapReader.of(node, "attributes.yaml", diagnostics);
        for (Node item : file.list("attributes")) {
            MapReader map = MapReader.of(item, "an attribute", diagnostics);
            String id = map.id("id");
            String label = map.required("label");
            String question = map.required("question");
            types.type(map, id, item.place()).ifPresent(t -> {
                if (attributes.putIfAbsent(id, Attribute.further(id, label, question, t)) != null) {
                    diagnostics.add(Message.DUPLICATE_ID, item.place(), id, "attribute", "the same file");
                }
            });
            map.noMore();
        }
        file.noMore();
    }
}

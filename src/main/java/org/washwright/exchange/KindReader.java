package org.washwright.exchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.line.sizing.SizingInputs;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.ProcessFigures;
import org.washwright.task.FieldType;

/** Reads the kinds of terms and what a term or an attribute can hold. */
final class KindReader {

    private final Diagnostics diagnostics;
    private final Map<String, Kind> kinds = new TreeMap<>();

    KindReader(Diagnostics diagnostics) {
        this.diagnostics = diagnostics;
    }

    /** The kinds that these documents declare. */
    Map<String, Kind> read(List<Node> documents) {
        documents.stream().filter(n -> CatalogueReader.has(n, "kinds")).forEach(this::kinds);
        checkKinds(documents);
        return kinds;
    }

    private void kinds(Node node) {
        MapReader file = MapReader.of(node, "kinds.yaml", diagnostics);
        for (Node.Entry e : file.entries("kinds")) {
            MapReader map = MapReader.of(e.value(), "a kind", diagnostics);
            Map<String, Property> properties = new LinkedHashMap<>();
            for (Node.Entry p : map.entries("properties")) {
                property(e.key(), p).ifPresent(x -> properties.put(x.id(), x));
            }
            if (!e.key().matches("[a-z][a-z0-9-]{0,59}") || e.key().equals(FieldType.FLAG)) {
                diagnostics.add(Message.BAD_ID, e.keyPlace(), e.key());
            }
            kinds.put(e.key(), new Kind(e.key(), map.required("name"), properties));
            map.noMore();
        }
        file.noMore();
    }

    private Optional<Property> property(String kind, Node.Entry e) {
        if (!e.key().matches("[a-z][A-Za-z0-9]{0,59}")) {
            diagnostics.add(Message.BAD_ID, e.keyPlace(), e.key());
        }
        if (kind.equals("process")
                && ProcessFigures.ALL.stream().anyMatch(a -> a.name().equals(e.key()))) {
            diagnostics.add(Message.RESERVED_PROPERTY, e.keyPlace(), e.key());
        }
        MapReader map = MapReader.of(e.value(), "a property", diagnostics);
        String label = map.required("label");
        Optional<FieldType> type = type(map, e.key(), e.keyPlace());
        map.noMore();
        SizingInputs.ofProperty(kind, e.key()).ifPresent(d -> {
            if (type.isPresent() && !type.get().equals(FieldType.number(d))) {
                diagnostics.add(Message.WRONG_DIMENSION, e.keyPlace(), e.key(), d.label(), "quantity: " + d.id());
            }
        });
        return type.map(t -> new Property(e.key(), label, t));
    }

    /** What a property or attribute holds; empty after an error. */
    Optional<FieldType> type(MapReader map, String name, Place place) {
        String quantity = map.text("quantity");
        String kind = map.text("kind");
        boolean flag = map.get("flag").isPresent() && map.flag("flag");
        String unit = map.text("unit");
        int count = (quantity.isEmpty() ? 0 : 1) + (kind.isEmpty() ? 0 : 1) + (flag ? 1 : 0);
        if (count != 1) {
            diagnostics.add(Message.PROPERTY_SHAPE, place, name);
            return Optional.empty();
        }
        if (flag) {
            return Optional.of(FieldType.flag());
        }
        if (!kind.isEmpty()) {
            return Optional.of(FieldType.term(kind));
        }
        Optional<Dimension> dimension = Dimension.byId(quantity);
        if (dimension.isEmpty()) {
            diagnostics.add(Message.UNKNOWN_DIMENSION, place, quantity, Similar.advice(quantity, Dimension.ids()));
        } else if (!unit.isEmpty() && !Quantities.isUnitOf(unit, dimension.get())) {
            diagnostics.add(
                    Message.WRONG_DIMENSION,
                    place,
                    unit,
                    dimension.get().label(),
                    dimension.get().example());
        }
        return dimension.map(FieldType::number);
    }

    private void checkKinds(List<Node> documents) {
        Place place = documents.isEmpty()
                ? Place.ofFile("catalogue/kinds.yaml")
                : documents.get(0).place();
        for (String known : Catalogue.KINDS_KNOWN) {
            if (!kinds.containsKey(known)) {
                diagnostics.add(
                        Message.MISSING_FIELD, new Place("catalogue/kinds.yaml", 0, 0, ""), "", "kinds.yaml", known);
            }
        }
        kinds.values()
                .forEach(k -> k.properties().values().forEach(p -> {
                    if (p.type() instanceof FieldType.TermType t && !t.isFlag() && !kinds.containsKey(t.kind())) {
                        diagnostics.add(
                                Message.UNKNOWN_KIND, place, t.kind(), Similar.advice(t.kind(), kinds.keySet()));
                    }
                }));
    }
}

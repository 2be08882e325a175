package org.washwright.plant;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;
import org.washwright.task.Value;
import org.washwright.task.ValueReader;

/** Reads a plant from YAML or JSON by the words of an edition. Finds every error at once. */
public final class PlantReader {

    /** Most bytes of a plant. */
    public static final int MAX_BYTES = 200_000;

    private static final int NAME_LENGTH = 200;
    private static final int NOTES_LENGTH = 10_000;
    private static final int MOST_STAGES = 40;
    private static final int MOST_CHAMBERS = 100;
    private static final double WEEK = 7 * 24 * 3600.0;
    private static final String UNKNOWN = "unknown";

    private final Edition edition;
    private final Catalogue catalogue;
    private final Diagnostics diagnostics;
    private final ValueReader values;

    private PlantReader(Edition edition, Diagnostics diagnostics) {
        this.edition = edition;
        this.catalogue = edition.catalogue();
        this.diagnostics = diagnostics;
        this.values = new ValueReader(edition, diagnostics);
    }

    /**
     * Reads a plant; empty when there was any error.
     *
     * @param file name for messages
     * @param bytes UTF-8 text
     */
    public static Optional<Plant> read(String file, byte[] bytes, Edition edition, Diagnostics diagnostics) {
        if (bytes.length > MAX_BYTES) {
            diagnostics.add(Message.TOO_LARGE, Place.ofFile(file), bytes.length + " bytes", MAX_BYTES + " bytes");
            return Optional.empty();
        }
        return DocumentReader.read(file, bytes, diagnostics).flatMap(n -> read(n, edition, diagnostics));
    }

    /** The same from a document already read. */
    public static Optional<Plant> read(Node node, Edition edition, Diagnostics diagnostics) {
        Optional<Plant> plant = new PlantReader(edition, diagnostics).plant(node);
        return diagnostics.hasErrors() ? Optional.empty() : plant;
    }

    private Optional<Plant> plant(Node node) {
        MapReader map = MapReader.of(node, "a plant", diagnostics);
        String name = bounded(map, "name", NAME_LENGTH, map.required("name"));
        String notes = bounded(map, "notes", NOTES_LENGTH, map.text("notes"));
        map.text("shows");
        Optional<ProcessTerm> process = process(map);
        Optional<List<String>> stages = stages(map, process);
        Map<String, Map<String, Value>> settings = settings(map, process, stages);
        Plant.Basket basket = basket(map);
        Value largest = quantity(map, "largestPart", Dimension.LENGTH, true);
        Value chambers = within(map, "chambers", Dimension.RATIO, 1, MOST_CHAMBERS, "1 to " + MOST_CHAMBERS);
        Value hours = within(map, "hours", Dimension.TIME, 1, WEEK, "a week of 168 h");
        Optional<List<String>> solvents = solvents(map, process);
        Value transfer = quantity(map, "transfer", Dimension.TIME, false);
        Value availability = within(map, "availability", Dimension.SHARE, 0.01, 1, "1 to 100 %");
        map.noMore();
        return process.map(p -> new Plant(
                name,
                notes,
                p.id(),
                stages,
                settings,
                basket,
                largest,
                chambers,
                hours,
                solvents,
                transfer,
                availability));
    }

    private String bounded(MapReader map, String key, int longest, String text) {
        if (text.length() > longest) {
            diagnostics.add(Message.TEXT_TOO_LONG, map.get(key).map(Node::place).orElse(map.place()), text, longest);
        }
        return text;
    }

    private Optional<ProcessTerm> process(MapReader map) {
        String word = map.required("process");
        if (word.isEmpty()) {
            return Optional.empty();
        }
        Optional<ProcessTerm> found = catalogue
                .resolve("process", word)
                .map(catalogue.processes()::get)
                .filter(p -> !p.group());
        if (found.isEmpty()) {
            List<String> leaves =
                    catalogue.leaves().stream().map(ProcessTerm::id).toList();
            unknownTerm(map.get("process").orElseThrow(), word, "process (groups of processes are none)", leaves);
        }
        return found;
    }

    private void unknownTerm(Node at, String word, String what, Collection<String> known) {
        diagnostics.add(Message.UNKNOWN_TERM, at.place(), word, what, Similar.advice(word, known));
    }

    private Optional<List<String>> stages(MapReader map, Optional<ProcessTerm> process) {
        Optional<Node> given = map.get("stages");
        if (given.isEmpty() || isUnknown(given.get())) {
            return Optional.empty();
        }
        List<Node> items = map.list("stages");
        if (items.size() > MOST_STAGES) {
            diagnostics.add(
                    Message.LIST_TOO_LONG, given.get().place(), String.valueOf(items.size()), "stages", MOST_STAGES);
            return Optional.empty();
        }
        List<String> out = new ArrayList<>();
        for (Node item : items) {
            stage(item, process).ifPresent(id -> {
                if (id.equals(Plant.MAIN) && out.contains(id)) {
                    diagnostics.add(Message.DUPLICATE_KEY, item.place(), item.shown());
                } else {
                    out.add(id);
                }
            });
        }
        if (!out.contains(Plant.MAIN)) {
            out.add(placeOfMain(out), Plant.MAIN);
        }
        return Optional.of(out);
    }

    private Optional<String> stage(Node item, Optional<ProcessTerm> process) {
        String word = item.shown();
        if (word.equals(Plant.MAIN) || process.map(p -> p.id().equals(word)).orElse(false)) {
            return Optional.of(Plant.MAIN);
        }
        Optional<String> id = catalogue.resolve("stage", word);
        if (id.isEmpty()) {
            unknownTerm(item, word, "stage", edition.terms("stage"));
        }
        return id;
    }

    /** Where nobody says it, the main stage stands before the first one that the catalogue puts behind it. */
    private int placeOfMain(List<String> stages) {
        for (int i = 0; i < stages.size(); i++) {
            if (catalogue.stages().get(stages.get(i)).position() > StageTerm.MAIN) {
                return i;
            }
        }
        return stages.size();
    }

    private Map<String, Map<String, Value>> settings(
            MapReader map, Optional<ProcessTerm> process, Optional<List<String>> stages) {
        Map<String, Map<String, Value>> out = new TreeMap<>();
        for (Node.Entry entry : map.entries("settings")) {
            List<String> known = stages.orElseGet(() -> {
                List<String> all = new ArrayList<>(catalogue.stages().keySet());
                all.add(Plant.MAIN);
                return all;
            });
            String id = entry.key().equals(Plant.MAIN)
                    ? Plant.MAIN
                    : catalogue.resolve("stage", entry.key()).orElse(entry.key());
            if (!known.contains(id)) {
                diagnostics.add(
                        Message.UNKNOWN_FIELD,
                        entry.keyPlace(),
                        entry.key(),
                        "the stages of this plant",
                        Similar.advice(entry.key(), known));
                continue;
            }
            Optional<Setting> setting = id.equals(Plant.MAIN)
                    ? process.map(ProcessTerm::setting)
                    : Optional.ofNullable(catalogue.stages().get(id)).map(StageTerm::setting);
            setting.ifPresent(s -> out.put(id, settings(entry, s)));
        }
        return out;
    }

    private Map<String, Value> settings(Node.Entry stage, Setting setting) {
        Map<String, Value> out = new TreeMap<>();
        MapReader map = MapReader.of(stage.value(), "the settings of \"" + stage.key() + "\"", diagnostics);
        setting.windows().keySet().forEach(parameter -> {
            Dimension dimension = catalogue.parameters().get(parameter).dimension();
            Value value = quantity(map, parameter, dimension, false);
            if (value instanceof Value.Number) {
                out.put(parameter, value);
            }
        });
        map.noMore();
        return out;
    }

    private Plant.Basket basket(MapReader map) {
        Optional<Node> given = map.get("basket");
        if (given.isEmpty() || isUnknown(given.get())) {
            return Plant.Basket.UNKNOWN;
        }
        MapReader basket = MapReader.of(given.get(), "the basket", diagnostics);
        Plant.Basket out = new Plant.Basket(
                quantity(basket, "volume", Dimension.VOLUME, true),
                quantity(basket, "mass", Dimension.MASS, true),
                quantity(basket, "area", Dimension.AREA, true));
        basket.noMore();
        return out;
    }

    private Optional<List<String>> solvents(MapReader map, Optional<ProcessTerm> process) {
        Optional<Node> given = map.get("solvents");
        if (given.isEmpty() || isUnknown(given.get())) {
            return Optional.empty();
        }
        List<String> out = new ArrayList<>();
        for (Node item : map.list("solvents")) {
            Optional<String> id = catalogue.resolve("solvent-class", item.shown());
            id.ifPresentOrElse(
                    out::add, () -> unknownTerm(item, item.shown(), "solvent class", edition.terms("solvent-class")));
        }
        process.flatMap(this::solventOf)
                .filter(s -> !out.contains(s))
                .ifPresent(s -> diagnostics.add(
                        Message.PLANT_SOLVENT,
                        given.get().place(),
                        process.get().term().name(),
                        catalogue.name("solvent-class", s)));
        return Optional.of(out);
    }

    private Optional<String> solventOf(ProcessTerm process) {
        return one(process.term(), "medium")
                .flatMap(m -> catalogue.term("medium", m))
                .flatMap(m -> one(m, "solventClass"));
    }

    private static Optional<String> one(Term term, String property) {
        return term.property(property) instanceof Value.OneOf o && o.terms().size() == 1
                ? Optional.of(o.terms().first())
                : Optional.empty();
    }

    private static boolean isUnknown(Node node) {
        return node instanceof Node.ScalarNode s
                && (s.text().strip().equals(UNKNOWN) || s.text().isBlank());
    }

    /** A quantity; {@code boundless} allows {@code not applicable}: there is no such limit. */
    private Value quantity(MapReader map, String key, Dimension dimension, boolean boundless) {
        Optional<Node> node = map.get(key);
        if (node.isEmpty()) {
            return Value.UNKNOWN;
        }
        Value value = values.value(node.get(), FieldType.number(dimension)).orElse(Value.UNKNOWN);
        if (value instanceof Value.NotApplicable && !boundless) {
            diagnostics.add(Message.BAD_QUANTITY, node.get().place(), node.get().shown(), dimension.example());
            return Value.UNKNOWN;
        }
        return value;
    }

    private Value within(MapReader map, String key, Dimension dimension, double low, double high, String bounds) {
        Value value = quantity(map, key, dimension, false);
        if (value instanceof Value.Number n && !new Span(low, high).contains(n.span())) {
            Node node = map.get(key).orElseThrow();
            diagnostics.add(Message.OUT_OF_RANGE, node.place(), node.shown(), bounds);
        }
        return value;
    }
}

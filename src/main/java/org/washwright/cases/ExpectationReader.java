package org.washwright.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Similar;
import org.washwright.line.ProcessLine;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;
import org.washwright.task.Group;

/** Reads what a case expects, against the words of an edition. */
final class ExpectationReader {

    private static final List<String> VERBS =
            List.of("conclude", "ruleOut", "support", "oppose", "require", "limit", "caution", "ask", "verify");

    private final Edition edition;
    private final Catalogue catalogue;
    private final Diagnostics diagnostics;
    private final List<Expectation> out = new ArrayList<>();

    ExpectationReader(Edition edition, Diagnostics diagnostics) {
        this.edition = edition;
        this.catalogue = edition.catalogue();
        this.diagnostics = diagnostics;
    }

    List<Expectation> read(Node node) {
        MapReader map = MapReader.of(node, "\"expect\"", diagnostics);
        map.list("proposes").forEach(n -> stands(n, ProcessLine.Status.RECOMMENDED));
        map.list("conditional").forEach(n -> stands(n, ProcessLine.Status.CONDITIONAL));
        each(map, "rulesOut", this::rulesOut);
        each(map, "cautions", this::cautions);
        map.list("asks").forEach(this::asks);
        map.list("verifies")
                .forEach(n -> term("test-method", n).ifPresent(m -> out.add(new Expectation.Verifies(n.place(), m))));
        each(map, "windows", this::window);
        each(map, "stages", this::order);
        for (Expectation.Reaction reaction : Expectation.Reaction.values()) {
            map.list(reaction.key()).forEach(n -> reacts(n, reaction));
        }
        each(map, "says", this::says);
        map.noMore();
        return out;
    }

    private void each(MapReader map, String key, BiConsumer<MapReader, Node> read) {
        for (Node item : map.list(key)) {
            MapReader one = MapReader.of(item, "an entry of \"" + key + "\"", diagnostics);
            read.accept(one, item);
            one.noMore();
        }
    }

    private void stands(Node node, ProcessLine.Status status) {
        process(node).ifPresent(p -> out.add(new Expectation.Stands(node.place(), p, status)));
    }

    private void rulesOut(MapReader map, Node node) {
        Optional<String> by = map.get("by").flatMap(this::rule);
        needed(map, "process")
                .flatMap(this::process)
                .ifPresent(p -> out.add(new Expectation.RulesOut(node.place(), p, by)));
    }

    private void cautions(MapReader map, Node node) {
        Optional<String> by = map.get("by").flatMap(this::rule);
        Optional<String> process = map.get("process").flatMap(this::process);
        needed(map, "hazard")
                .flatMap(n -> term("hazard", n))
                .ifPresent(h -> out.add(new Expectation.Cautions(node.place(), h, process, by)));
    }

    private void asks(Node node) {
        String ref = node.shown();
        int slash = ref.lastIndexOf('/');
        Optional<Group> list = Group.byKey(ref).filter(Group::isList);
        String type = slash < 0
                ? ""
                : ref.startsWith("attributes/")
                        ? FactTypes.declared(ref.substring("attributes/".length(), slash))
                        : Group.byKey(ref.substring(0, ref.indexOf('/')))
                                .map(Group::factType)
                                .orElse("");
        boolean known = list.isPresent()
                || edition.types()
                        .type(type)
                        .flatMap(t -> t.field(ref.substring(slash + 1)))
                        .isPresent();
        if (known) {
            out.add(new Expectation.Asks(node.place(), ref));
        } else {
            List<String> groups = Arrays.stream(Group.values()).map(Group::key).toList();
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    node.place(),
                    ref,
                    "attribute such as materials/0/hardness",
                    Similar.advice(ref, groups));
        }
    }

    private void window(MapReader map, Node node) {
        Optional<String> process = needed(map, "process").flatMap(this::process);
        Optional<String> stage = needed(map, "stage").flatMap(this::stage);
        Optional<String> id = needed(map, "parameter").flatMap(n -> term("parameter", n));
        Optional<Node> min = map.get("min");
        Optional<Node> max = map.get("max");
        Optional<Node> within = map.get("within");
        if (min.isEmpty() && max.isEmpty() && within.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, node.place(), "", "an entry of \"windows\"", "min, max or within");
        }
        if (process.isEmpty() || stage.isEmpty() || id.isEmpty()) {
            return;
        }
        Parameter parameter = catalogue.parameters().get(id.get());
        out.add(new Expectation.WindowIs(
                node.place(),
                process.get(),
                stage.get(),
                id.get(),
                number(min, parameter),
                number(max, parameter),
                within.flatMap(n -> Quantities.readSpan(n.shown(), parameter.dimension(), n.place(), diagnostics))));
    }

    private OptionalDouble number(Optional<Node> node, Parameter parameter) {
        Optional<Span> span =
                node.flatMap(n -> Quantities.readSpan(n.shown(), parameter.dimension(), n.place(), diagnostics));
        return span.isPresent() ? OptionalDouble.of(span.get().low()) : OptionalDouble.empty();
    }

    private void order(MapReader map, Node node) {
        Optional<String> process = needed(map, "process").flatMap(this::process);
        List<String> stages = new ArrayList<>();
        needed(map, "order");
        map.list("order").forEach(n -> stage(n).ifPresent(stages::add));
        process.ifPresent(p -> out.add(new Expectation.StageOrder(node.place(), p, stages)));
    }

    private void reacts(Node node, Expectation.Reaction reaction) {
        if (!(node instanceof Node.MapNode)) {
            rule(node)
                    .ifPresent(r -> out.add(
                            new Expectation.Reacts(node.place(), r, reaction, Optional.empty(), Optional.empty())));
            return;
        }
        MapReader map = MapReader.of(node, "an entry of \"" + reaction.key() + "\"", diagnostics);
        Optional<SortedSet<String>> about = about(map);
        Optional<SortedSet<String>> on =
                map.get("on").isEmpty() ? Optional.empty() : Optional.of(new TreeSet<>(map.texts("on")));
        needed(map, "rule")
                .flatMap(this::rule)
                .ifPresent(r -> out.add(new Expectation.Reacts(node.place(), r, reaction, about, on)));
        map.noMore();
    }

    private void says(MapReader map, Node node) {
        Optional<String> rule = needed(map, "rule").flatMap(this::rule);
        Optional<Node> verb = needed(map, "verb");
        verb.filter(v -> !VERBS.contains(v.shown()))
                .ifPresent(v ->
                        diagnostics.add(Message.UNKNOWN_VERB, v.place(), v.shown(), Similar.advice(v.shown(), VERBS)));
        String detail = map.text("detail");
        Optional<SortedSet<String>> about = about(map);
        if (rule.isPresent() && verb.isPresent()) {
            out.add(new Expectation.Says(node.place(), rule.get(), verb.get().shown(), detail, about));
        }
    }

    /** The processes under {@code for}; empty when the key is missing, an empty set when nobody is named. */
    private Optional<SortedSet<String>> about(MapReader map) {
        if (map.get("for").isEmpty()) {
            return Optional.empty();
        }
        TreeSet<String> processes = new TreeSet<>();
        map.list("for").forEach(n -> process(n).ifPresent(processes::add));
        return Optional.of(processes);
    }

    private Optional<Node> needed(MapReader map, String key) {
        Optional<Node> node = map.get(key);
        if (node.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, map.place(), "", "the entry", key);
        }
        return node;
    }

    private Optional<String> rule(Node node) {
        List<String> ids = edition.rules().stream().map(Rule::id).toList();
        return known(node, Optional.of(node.shown()).filter(ids::contains), "rule of this edition", ids);
    }

    private Optional<String> process(Node node) {
        List<String> ids = catalogue.leaves().stream().map(ProcessTerm::id).toList();
        Optional<String> found = catalogue.resolve("process", node.shown()).filter(ids::contains);
        return known(node, found, "process (a group of processes has no status)", ids);
    }

    private Optional<String> stage(Node node) {
        if (node.shown().equals(Effect.StageRef.MAIN)) {
            return Optional.of(Effect.StageRef.MAIN);
        }
        return term("stage", node);
    }

    private Optional<String> term(String kind, Node node) {
        return known(
                node,
                catalogue.resolve(kind, node.shown()),
                kind.replace('-', ' '),
                catalogue.ofKind(kind).keySet());
    }

    private Optional<String> known(Node node, Optional<String> found, String what, Collection<String> ids) {
        if (found.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE, node.place(), node.shown(), what, Similar.advice(node.shown(), ids));
        }
        return found;
    }
}

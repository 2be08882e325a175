package org.washwright.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;
import org.washwright.document.Node.ScalarNode;
import org.washwright.document.Similar;
import org.washwright.quantity.Quantities;
import org.washwright.science.ComponentCleanlinessCode;
import org.washwright.science.ProductCleanlinessCode;
import org.washwright.science.RefusedInput;

/** Reads one value: a quantity, a range, a term, several terms, a flag, a code, unknown, not applicable or a tree's path. */
public final class ValueReader {

    static final Set<String> YES = Set.of("yes", "true");
    static final Set<String> NO = Set.of("no", "false");
    static final String NOT_APPLICABLE = "not applicable";
    private static final int CODE_LENGTH = 200;

    private final Vocabulary vocabulary;
    private final Diagnostics diagnostics;

    /** A reader that knows the terms of an edition. */
    public ValueReader(Vocabulary vocabulary, Diagnostics diagnostics) {
        this.vocabulary = vocabulary;
        this.diagnostics = diagnostics;
    }

    /**
     * Reads the value of an attribute of a fact type; empty after an error.
     *
     * @param pointer where the attribute stands in a task's usual form, whatever form it was written in
     */
    public Optional<Given> read(Node node, Attribute attribute, String factType, String pointer) {
        if (node instanceof MapNode map) {
            return tree(map, attribute, factType, pointer);
        }
        if (attribute.type() instanceof FieldType.CodeType type && node instanceof ScalarNode s) {
            return code(s, type.code(), pointer);
        }
        return value(node, attribute.type()).map(v -> Given.of(v, pointer));
    }

    /** Reads a value of a type; empty after an error. */
    public Optional<Value> value(Node node, FieldType type) {
        if (node instanceof ScalarNode s) {
            return scalar(s, type);
        }
        if (node instanceof ListNode list && type instanceof FieldType.TermType) {
            return oneOf(list, type);
        }
        diagnostics.add(Message.EXPECTED_TEXT, node.place(), node.shown());
        return Optional.empty();
    }

    private Optional<Value> oneOf(ListNode list, FieldType type) {
        List<String> terms = new ArrayList<>();
        for (Node item : list.items()) {
            if (!(item instanceof ScalarNode s)) {
                diagnostics.add(Message.EXPECTED_TEXT, item.place(), item.shown());
                return Optional.empty();
            }
            Optional<Value> one = scalar(s, type);
            if (one.isEmpty()) {
                return one;
            }
            if (one.get() instanceof Value.OneOf o) {
                terms.addAll(o.terms());
            } else {
                return Optional.of(Value.UNKNOWN);
            }
        }
        return Optional.of(terms.isEmpty() ? Value.UNKNOWN : Value.oneOf(terms));
    }

    private Optional<Value> scalar(ScalarNode node, FieldType type) {
        String text = node.text().strip();
        if (text.equals("unknown") || text.isEmpty()) {
            return Optional.of(Value.UNKNOWN);
        }
        if (text.equals(NOT_APPLICABLE)) {
            return Optional.of(Value.NOT_APPLICABLE);
        }
        if (type instanceof FieldType.NumberType n) {
            return Quantities.readSpan(text, n.dimension(), node.place(), diagnostics)
                    .map(Value.Number::new);
        }
        FieldType.TermType term = (FieldType.TermType) type;
        return term.isFlag() ? flag(node, text) : term(node, term.kind(), text);
    }

    private Optional<Value> flag(ScalarNode node, String text) {
        if (YES.contains(text)) {
            return Optional.of(Value.flag(true));
        }
        if (NO.contains(text)) {
            return Optional.of(Value.flag(false));
        }
        diagnostics.add(Message.NOT_A_FLAG, node.place(), text);
        return Optional.empty();
    }

    private Optional<Value> term(ScalarNode node, String kind, String text) {
        Optional<String> id = vocabulary.term(kind, text);
        if (id.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_TERM,
                    node.place(),
                    text,
                    kind.replace('-', ' '),
                    Similar.advice(text, vocabulary.terms(kind)));
        }
        return id.map(Value::term);
    }

    private Optional<Given> code(ScalarNode node, FieldType.Code kind, String pointer) {
        String text = node.text().strip();
        if (text.equals("unknown") || text.isEmpty()) {
            return Optional.of(Given.of(Value.UNKNOWN, pointer));
        }
        if (text.equals(NOT_APPLICABLE)) {
            return Optional.of(Given.of(Value.NOT_APPLICABLE, pointer));
        }
        if (text.length() > CODE_LENGTH) {
            diagnostics.add(Message.TEXT_TOO_LONG, node.place(), text, CODE_LENGTH);
            return Optional.empty();
        }
        try {
            String code = kind == FieldType.Code.COMPONENT_CLEANLINESS
                    ? ComponentCleanlinessCode.parse(text).text()
                    : ProductCleanlinessCode.parse(text).text();
            return Optional.of(new Given(Value.term(code), pointer, "", false, code));
        } catch (ComponentCleanlinessCode.BadCode e) {
            diagnostics.add(Message.BAD_CODE, node.place(), text, e.getMessage());
        } catch (RefusedInput e) {
            diagnostics.add(Message.BAD_LEVEL, node.place(), text, e.getMessage());
        }
        return Optional.empty();
    }

    private Optional<Given> tree(MapNode map, Attribute attribute, String factType, String pointer) {
        Set<String> known = Set.of("value", "tree", "answers");
        map.entries().stream()
                .filter(e -> !known.contains(e.key()))
                .forEach(e -> diagnostics.add(
                        Message.UNKNOWN_FIELD, e.keyPlace(), e.key(), "a value", Similar.advice(e.key(), known)));
        Optional<Given> own = map.get("value").flatMap(n -> read(n, attribute, factType, pointer));
        Optional<Node> treeNode = map.get("tree");
        if (treeNode.isEmpty()) {
            return own;
        }
        String id = treeNode.get().shown();
        Optional<Vocabulary.Questions> questions = vocabulary.questions(id);
        if (questions.isEmpty()) {
            diagnostics.add(Message.UNKNOWN_TREE, treeNode.get().place(), id, Similar.advice(id, vocabulary.treeIds()));
            return Optional.empty();
        }
        if (!questions.get().proposes().equals(factType + "." + attribute.name())) {
            diagnostics.add(
                    Message.TREE_ATTRIBUTE,
                    treeNode.get().place(),
                    id,
                    questions.get().proposes());
            return Optional.empty();
        }
        return played(map, questions.get(), own, pointer);
    }

    private Optional<Given> played(MapNode map, Vocabulary.Questions questions, Optional<Given> own, String pointer) {
        Node answersNode = map.get("answers").orElse(new ListNode(map.place(), List.of()));
        if (!(answersNode instanceof ListNode list)) {
            diagnostics.add(Message.EXPECTED_LIST, answersNode.place(), answersNode.shown());
            return Optional.empty();
        }
        List<String> answers = list.items().stream().map(Node::shown).toList();
        Vocabulary.Played played = questions.play(answers);
        if (!played.badAnswer().isEmpty()) {
            diagnostics.add(
                    Message.TREE_PATH,
                    list.place(),
                    played.badAnswer(),
                    played.question(),
                    Similar.advice(played.badAnswer(), played.possible()));
            return Optional.empty();
        }
        if (played.proposal().isEmpty()) {
            diagnostics.add(
                    Message.TREE_UNFINISHED,
                    list.place(),
                    "",
                    map.get("tree").orElseThrow().shown(),
                    played.question());
            return Optional.empty();
        }
        return Optional.of(own.map(o -> new Given(o.value(), pointer, played.path(), true, o.code()))
                .orElseGet(() -> new Given(played.proposal().get(), pointer, played.path(), false, "")));
    }
}

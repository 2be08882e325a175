package org.washwright.exchange;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Similar;
import org.washwright.rule.Basis;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.QuestionTree.Answer;
import org.washwright.rule.QuestionTree.Question;
import org.washwright.rule.Rule;
import org.washwright.rule.check.Citations;
import org.washwright.rule.check.Terms;
import org.washwright.task.Attribute;
import org.washwright.task.Group;
import org.washwright.task.Value;
import org.washwright.task.ValueReader;

/** Reads and checks a question tree. */
final class TreeReader {

    private final Terms terms;
    private final Diagnostics diagnostics;

    TreeReader(Terms terms, Diagnostics diagnostics) {
        this.terms = terms;
        this.diagnostics = diagnostics;
    }

    Optional<QuestionTree> read(Node node) {
        MapReader map = MapReader.of(node, "a question tree", diagnostics);
        String id = map.id("id");
        String title = map.required("title");
        String proposes = map.required("proposes");
        String basisText = map.required("basis");
        Optional<Basis> basis = Basis.of(basisText);
        if (basis.isEmpty()) {
            diagnostics.add(Message.BAD_BASIS, node.place(), basisText);
        }
        List<Rule.Cite> sources = Citations.read(map.text("source"), terms, node.place(), diagnostics);
        if (basis.isPresent() && basis.get() != Basis.COMMON_PRACTICE && sources.isEmpty()) {
            diagnostics.add(Message.NO_SOURCE, node.place(), id);
        }
        int dot = proposes.indexOf('.');
        Optional<Attribute> attribute = dot < 0
                ? Optional.empty()
                : Group.byFactType(proposes.substring(0, dot))
                        .flatMap(g -> g.attribute(proposes.substring(dot + 1)))
                        .filter(a -> !a.computed());
        if (attribute.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    node.place(),
                    proposes,
                    "attribute of a task",
                    "Write for instance Soil.kind");
            return Optional.empty();
        }
        String start = map.required("start");
        Map<String, Question> questions = new LinkedHashMap<>();
        for (Node.Entry e : map.entries("questions")) {
            questions.put(e.key(), question(e, attribute.get()));
        }
        map.noMore();
        if (!references(node, start, questions)) {
            return Optional.empty();
        }
        return basis.map(b -> new QuestionTree(
                id, title, proposes.substring(0, dot), proposes.substring(dot + 1), b, sources, start, questions));
    }

    private Question question(Node.Entry entry, Attribute attribute) {
        MapReader map = MapReader.of(entry.value(), "a question", diagnostics);
        List<Answer> answers = new ArrayList<>();
        for (Node item : map.list("answers")) {
            MapReader a = MapReader.of(item, "an answer", diagnostics);
            String next = a.text("next");
            Optional<Value> proposal = a.get("propose")
                    .flatMap(n -> new ValueReader(
                                    new BareVocabulary(
                                            terms.catalogue()::resolve,
                                            kind -> terms.catalogue()
                                                    .ofKind(kind)
                                                    .keySet()),
                                    diagnostics)
                            .value(n, attribute.type()));
            answers.add(new Answer(a.id("id"), a.required("say"), next, proposal));
            a.noMore();
            if (next.isEmpty() == proposal.isEmpty()) {
                diagnostics.add(Message.MISSING_FIELD, item.place(), "", "an answer", "next\" or \"propose");
            }
        }
        if (answers.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, map.place(), "", "the question \"" + entry.key() + "\"", "answers");
        }
        Question question = new Question(entry.key(), map.required("ask"), map.text("help"), List.copyOf(answers));
        map.noMore();
        return question;
    }

    private boolean references(Node node, String start, Map<String, Question> questions) {
        boolean sound = true;
        Set<String> named = new HashSet<>();
        questions.values().forEach(q -> q.answers().forEach(a -> named.add(a.next())));
        // An answer that proposes leads to no question; a tree that starts nowhere is no tree.
        named.remove("");
        named.add(start);
        for (String name : named.stream().sorted().toList()) {
            if (!questions.containsKey(name)) {
                sound = false;
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        node.place(),
                        name,
                        "question",
                        Similar.advice(name, questions.keySet()));
            }
        }
        return sound && acyclic(node, start, questions);
    }

    private boolean acyclic(Node node, String start, Map<String, Question> questions) {
        // Kahn's order over what the start reaches: what is left over stands on a circle.
        Map<String, Integer> waiting = new LinkedHashMap<>();
        Deque<String> toVisit = new ArrayDeque<>(List.of(start));
        Set<String> reached = new HashSet<>(Set.of(start));
        while (!toVisit.isEmpty()) {
            for (Answer a : questions.get(toVisit.poll()).answers()) {
                if (!a.next().isEmpty()) {
                    waiting.merge(a.next(), 1, Integer::sum);
                    if (reached.add(a.next())) {
                        toVisit.add(a.next());
                    }
                }
            }
        }
        questions.keySet().stream()
                .filter(q -> !reached.contains(q))
                .forEach(q -> diagnostics.add(Message.TREE_UNREACHED, node.place(), q));
        Deque<String> ready = new ArrayDeque<>(waiting.containsKey(start) ? List.of() : List.of(start));
        Set<String> done = new HashSet<>();
        while (!ready.isEmpty()) {
            String q = ready.poll();
            done.add(q);
            for (Answer a : questions.get(q).answers()) {
                if (!a.next().isEmpty() && waiting.merge(a.next(), -1, Integer::sum) == 0) {
                    ready.add(a.next());
                }
            }
        }
        Optional<String> stuck =
                reached.stream().filter(q -> !done.contains(q)).sorted().findFirst();
        stuck.ifPresent(q -> diagnostics.add(Message.TREE_CYCLE, node.place(), q));
        return stuck.isEmpty();
    }
}

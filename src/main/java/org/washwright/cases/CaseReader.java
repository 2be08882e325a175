package org.washwright.cases;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.check.Citations;
import org.washwright.rule.check.Terms;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/**
 * Reads the files below {@code cases/}: those that end in {@value #TASK_END} are tasks, the others lists of cases. Finds
 * every error at once.
 */
public final class CaseReader {

    /** Folder of the files in an edition. */
    public static final String FOLDER = "cases/";

    /** End of the name of a file that holds a task. */
    public static final String TASK_END = ".task.yaml";

    /** Most cases of an edition. */
    public static final int MAX_CASES = 5_000;

    private final Edition edition;
    private final Terms terms;
    private final Diagnostics diagnostics;
    private final Map<String, Node> tasks = new TreeMap<>();
    private final Map<String, Draft> drafts = new LinkedHashMap<>();

    /** A case whose task is not put together yet. */
    private record Draft(MapReader map, Optional<Node> task, Optional<Node> change, Node node) {}

    private CaseReader(Edition edition, Diagnostics diagnostics) {
        this.edition = edition;
        this.terms = new Terms(edition.catalogue(), edition.types(), edition.grading(), edition.sources());
        this.diagnostics = diagnostics;
    }

    /**
     * Reads all files of cases.
     *
     * @param documents documents by name within the edition
     * @return the cases in order of files and of writing; those with errors are left out
     */
    public static List<Case> read(Map<String, Node> documents, Edition edition, Diagnostics diagnostics) {
        return new CaseReader(edition, diagnostics).all(documents);
    }

    private List<Case> all(Map<String, Node> documents) {
        documents.forEach((name, node) -> {
            if (name.endsWith(TASK_END)) {
                tasks.put(name, node);
                task(node);
            }
        });
        documents.forEach((name, node) -> {
            if (!name.endsWith(TASK_END)) {
                file(node);
            }
        });
        List<Case> cases = new ArrayList<>();
        drafts.forEach((id, draft) -> read(id, draft).ifPresent(cases::add));
        return cases;
    }

    private void file(Node node) {
        MapReader file = MapReader.of(node, "a file of cases", diagnostics);
        for (Node item : file.list("cases")) {
            if (drafts.size() >= MAX_CASES) {
                diagnostics.add(Message.TOO_LARGE, item.place(), "so many cases", MAX_CASES + " cases");
                return;
            }
            MapReader map = MapReader.of(item, "a case", diagnostics);
            String id = map.id("id");
            Draft draft = new Draft(map, map.get("task"), map.get("change"), item);
            Draft other = drafts.putIfAbsent(id.isEmpty() ? "?" + drafts.size() : id, draft);
            if (other != null) {
                diagnostics.add(
                        Message.DUPLICATE_ID,
                        item.place(),
                        id,
                        "case id",
                        other.node().place());
            }
        }
        file.noMore();
    }

    private Optional<Case> read(String id, Draft draft) {
        MapReader map = draft.map();
        int before = diagnostics.all().size();
        String title = map.required("title");
        Basis basis = basis(map);
        List<Rule.Cite> sources =
                Citations.read(map.text("source"), terms, place(map, draft.node(), "source"), diagnostics);
        if (sources.isEmpty() && basis != Basis.COMMON_PRACTICE) {
            diagnostics.add(Message.CASE_NO_SOURCE, map.place(), id);
        }
        List<Expectation> expectations = map.get("expect")
                .map(n -> new ExpectationReader(edition, diagnostics).read(n))
                .orElse(List.of());
        if (expectations.isEmpty()) {
            diagnostics.add(Message.CASE_EXPECTS_NOTHING, map.place(), id);
        }
        Optional<String> asOf = map.get("asOf").flatMap(this::date);
        Optional<CleaningTask> task = document(id, new HashSet<>()).flatMap(this::task);
        map.noMore();
        return task.isEmpty() || diagnostics.all().size() > before
                ? Optional.empty()
                : Optional.of(new Case(id, title, basis, sources, map.place(), asOf, task.get(), expectations));
    }

    private Basis basis(MapReader map) {
        String word = map.text("basis");
        if (word.isEmpty()) {
            return Basis.COMMON_PRACTICE;
        }
        Optional<Basis> basis = Basis.of(word);
        if (basis.isEmpty()) {
            diagnostics.add(Message.BAD_BASIS, map.get("basis").orElseThrow().place(), word);
        }
        return basis.orElse(Basis.COMMON_PRACTICE);
    }

    private Optional<String> date(Node node) {
        return Quantities.read(node.shown(), Dimension.DATE, node.place(), diagnostics)
                .map(days -> node.shown().strip());
    }

    private static Place place(MapReader map, Node node, String key) {
        return map.get(key).map(Node::place).orElse(node.place());
    }

    /** Reads a task with diagnostics of its own: the reader refuses it for whatever was wrong before. */
    private Optional<CleaningTask> task(Node node) {
        Diagnostics own = new Diagnostics();
        Optional<CleaningTask> task = TaskReader.read(node, edition, own);
        // A task that several cases are made from is told once what is wrong with it.
        List<Diagnostic> known = diagnostics.all();
        own.all().stream().filter(d -> !known.contains(d)).forEach(diagnostics::add);
        return task;
    }

    /** The document of a case's task; {@code above} holds the cases that wait for it. */
    private Optional<Node> document(String id, Set<String> above) {
        Draft draft = drafts.get(id);
        if (draft.task().isPresent() == draft.change().isPresent()) {
            diagnostics.add(Message.CASE_TASK, draft.node().place(), id);
            return Optional.empty();
        }
        if (draft.task().isPresent()) {
            Node task = draft.task().get();
            return task instanceof Node.ScalarNode name ? base(name.text(), name.place(), id, above) : draft.task();
        }
        MapReader change = MapReader.of(draft.change().get(), "a change", diagnostics);
        String of = change.required("of");
        List<Node.Entry> set = change.entries("set");
        change.noMore();
        Optional<Node> base = base(of, change.get("of").map(Node::place).orElse(change.place()), id, above);
        if (set.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, change.place(), "", "a change", "set");
        }
        return base.map(node -> new TaskChange(diagnostics).apply(node, set));
    }

    /** The task that a name stands for: a file or another case. */
    private Optional<Node> base(String of, Place place, String id, Set<String> above) {
        String file = of.startsWith(FOLDER) ? of : FOLDER + of;
        if (tasks.containsKey(file)) {
            return Optional.of(tasks.get(file));
        }
        above.add(id);
        if (above.contains(of)) {
            diagnostics.add(Message.CASE_CIRCLE, place, of);
            return Optional.empty();
        }
        if (drafts.containsKey(of)) {
            return document(of, above);
        }
        List<String> known = new ArrayList<>(drafts.keySet());
        tasks.keySet().forEach(name -> known.add(name.substring(FOLDER.length())));
        diagnostics.add(
                Message.UNKNOWN_REFERENCE, place, of, "case or file of a task below cases/", Similar.advice(of, known));
        return Optional.empty();
    }
}

package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.washwright.analysis.KnownFindingReader;
import org.washwright.cases.CaseReader;
import org.washwright.catalogue.Catalogue;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Hashes;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.grid.GridPlanReader;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Grading;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.Rule;
import org.washwright.rule.check.CheckedRule;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.RuleTextReader;
import org.washwright.rule.syntax.SyntaxRule;

/**
 * One reading of one edition, part by part. Each part is made from the bytes of some files and from parts before it, and is
 * kept by their hashes.
 */
final class PartReader {

    private static final String HEAD = "edition.yaml";
    private static final String GRADING = "grading.yaml";
    private static final String ASSUMPTIONS = "assumptions.yaml";
    private static final String CATALOGUE = "catalogue/";
    private static final String RULES = "rules/";
    private static final String TABLES = "tables/";
    private static final String TREES = "trees/";

    private final RuleTextReader ruleText;
    private final ReadFiles before;
    private final EditionFiles files;
    private final FileKeys keys;
    private final Diagnostics diagnostics;
    private final String wordsKey;
    private final String treesKey;

    PartReader(RuleTextReader ruleText, ReadFiles before, EditionFiles files, Diagnostics diagnostics) {
        this.ruleText = ruleText;
        this.before = before;
        before.begin();
        this.files = files;
        this.keys = FileKeys.of(files);
        this.diagnostics = diagnostics;
        this.wordsKey = keys.together(PartReader::isOfWords);
        this.treesKey = Hashes.sha256(wordsKey + keys.together(in(TREES)));
    }

    private static boolean isOfWords(String name) {
        return name.equals(HEAD) || name.equals(GRADING) || name.startsWith(CATALOGUE);
    }

    private static Predicate<String> in(String folder) {
        return name -> name.startsWith(folder);
    }

    EditionReader.Inspection inspect() {
        Words words = before.words.read(wordsKey, keys.sizeTogether(PartReader::isOfWords), diagnostics, this::words);
        Terms terms = words.terms();
        RuleChecker.Sound sound = rules(terms);
        Map<String, QuestionTree> trees =
                before.trees.read(treesKey, keys.sizeTogether(in(TREES)), diagnostics, found -> trees(terms, found));
        Map<String, Edition.Assumption> assumptions =
                before.assumptions.read(keys.of(ASSUMPTIONS), keys.size(ASSUMPTIONS), diagnostics, this::assumptions);
        Map<String, Node> cases = named(CaseReader.FOLDER, diagnostics);
        Edition readable = new Edition(
                words.head().name(),
                words.head().title(),
                words.head().language(),
                words.head().licence(),
                words.head().sources(),
                words.catalogue(),
                words.types(),
                sound.rules(),
                sound.levels().levels(),
                trees,
                words.grading(),
                assumptions,
                "",
                files.textHash());
        Checks checks = diagnostics.hasErrors() ? Checks.NONE : checks(readable, cases);
        return new EditionReader.Inspection(readable, checks, diagnostics);
    }

    private Words words(Diagnostics found) {
        EditionHeader head =
                document(HEAD, found).map(n -> EditionHeader.read(n, found)).orElse(EditionHeader.EMPTY);
        Catalogue catalogue = new CatalogueReader(found, head.sources())
                .read(List.copyOf(named(CATALOGUE, found).values()));
        FactTypes types = FactTypes.of(catalogue);
        Grading grading = document(GRADING, found)
                .map(n -> GradingReader.read(n, types, found))
                .orElse(new Grading(Map.of(), List.of()));
        return new Words(head, catalogue, types, grading);
    }

    private RuleChecker.Sound rules(Terms terms) {
        RuleChecker checker = new RuleChecker(terms, diagnostics);
        Map<String, List<SyntaxRule>> written = new TreeMap<>();
        files.files().forEach((name, bytes) -> {
            if (name.startsWith(RULES)) {
                written.put(
                        name,
                        before.written.read(
                                keys.of(name),
                                bytes.length,
                                diagnostics,
                                found -> DocumentReader.decode(name, bytes, found)
                                        .map(text -> ruleText.read(name, text, found))
                                        .orElse(List.of())));
            } else if (name.startsWith(TABLES)) {
                written.put(
                        name,
                        before.written.read(
                                wordsKey + keys.of(name),
                                bytes.length,
                                diagnostics,
                                found -> DocumentReader.decode(name, bytes, found)
                                        .map(text -> new TableReader(name, terms, found).read(text))
                                        .orElse(List.of())));
            }
        });
        List<SyntaxRule> all = written.values().stream().flatMap(List::stream).toList();
        if (!checker.fewEnough(all)) {
            return RuleChecker.Sound.NONE;
        }
        List<CheckedRule> checked = new ArrayList<>();
        written.forEach((name, rules) -> checked.addAll(before.checked.get(
                wordsKey + keys.of(name),
                keys.size(name),
                () -> rules.stream().map(checker::alone).toList())));
        return checker.together(checked);
    }

    private Map<String, QuestionTree> trees(Terms terms, Diagnostics found) {
        Map<String, QuestionTree> trees = new TreeMap<>();
        for (Node node : named(TREES, found).values()) {
            new TreeReader(terms, found).read(node).ifPresent(tree -> {
                if (trees.putIfAbsent(tree.id(), tree) != null) {
                    found.add(Message.DUPLICATE_ID, node.place(), tree.id(), "tree id", "another file");
                }
            });
        }
        return trees;
    }

    private Map<String, Edition.Assumption> assumptions(Diagnostics found) {
        return optional(ASSUMPTIONS, found)
                .map(node -> assumptions(node, found))
                .orElse(Map.of());
    }

    private static Map<String, Edition.Assumption> assumptions(Node node, Diagnostics found) {
        Map<String, Edition.Assumption> out = new TreeMap<>();
        MapReader file = MapReader.of(node, ASSUMPTIONS, found);
        for (Node item : file.list("assumptions")) {
            AssumptionReader.read(item, found).ifPresent(a -> {
                if (out.putIfAbsent(a.id(), a) != null) {
                    found.add(Message.DUPLICATE_ID, item.place(), a.id(), "assumption", "the same file");
                }
            });
        }
        file.noMore();
        return out;
    }

    /** Cases and the like name rules by their ids and see nothing else of them. */
    private Checks checks(Edition edition, Map<String, Node> cases) {
        String ids = Hashes.sha256(
                String.join("\n", edition.rules().stream().map(Rule::id).toList()));
        Predicate<String> isCase = in(CaseReader.FOLDER);
        return new Checks(
                before.cases.read(
                        treesKey + ids + keys.together(isCase),
                        keys.sizeTogether(isCase),
                        diagnostics,
                        found -> CaseReader.read(cases, edition, found)),
                before.known.read(
                        ids + keys.of(KnownFindingReader.FILE),
                        keys.size(KnownFindingReader.FILE),
                        diagnostics,
                        found -> optional(KnownFindingReader.FILE, found)
                                .map(n -> KnownFindingReader.read(n, edition, found))
                                .orElse(List.of())),
                before.grid.read(
                        treesKey + keys.of(GridPlanReader.FILE),
                        keys.size(GridPlanReader.FILE),
                        diagnostics,
                        found -> optional(GridPlanReader.FILE, found)
                                .flatMap(n -> GridPlanReader.read(n, edition, found))));
    }

    private Optional<Node> optional(String name, Diagnostics found) {
        return files.files().containsKey(name) ? document(name, found) : Optional.empty();
    }

    private Optional<Node> document(String name, Diagnostics found) {
        byte[] bytes = files.files().get(name);
        if (bytes == null) {
            found.add(Message.MISSING_FILE, Place.ofFile(name), name, name);
            return Optional.empty();
        }
        return before.documents.read(keys.of(name), bytes.length, found, own -> DocumentReader.read(name, bytes, own));
    }

    private Map<String, Node> named(String folder, Diagnostics found) {
        Map<String, Node> nodes = new TreeMap<>();
        files.files().keySet().stream()
                .filter(in(folder))
                .forEach(name -> document(name, found).ifPresent(node -> nodes.put(name, node)));
        return nodes;
    }
}

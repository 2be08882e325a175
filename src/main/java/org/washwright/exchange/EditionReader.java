package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.analysis.KnownFindingReader;
import org.washwright.cases.CaseReader;
import org.washwright.catalogue.Catalogue;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.grid.GridPlanReader;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Grading;
import org.washwright.rule.Levels;
import org.washwright.rule.MeaningHash;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.Rule;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.RuleTextReader;
import org.washwright.rule.syntax.SyntaxRule;

/** Reads and checks a whole edition. Every error of every file comes at once. */
public final class EditionReader {

    private final RuleTextReader ruleText;

    /** A reader that hands rule text to {@code ruleText}. */
    public EditionReader(RuleTextReader ruleText) {
        this.ruleText = ruleText;
    }

    /**
     * What came of reading.
     *
     * @param edition the edition, unless there was an error
     * @param checks how it is to be checked
     * @param diagnostics all that was found
     */
    public record Result(Optional<Edition> edition, Checks checks, Diagnostics diagnostics) {

        /** Nothing came of it. */
        public static Result failed(Diagnostics diagnostics) {
            return new Result(Optional.empty(), Checks.NONE, diagnostics);
        }
    }

    /** Reads the files of an edition. */
    public Result read(EditionFiles files) {
        return read(files, new Diagnostics());
    }

    /** The same, adding to what was found while the files were gathered. */
    public Result read(EditionFiles files, Diagnostics diagnostics) {
        Optional<Node> header = document(files, "edition.yaml", diagnostics);
        Header head = header.map(n -> Header.read(n, diagnostics)).orElse(Header.EMPTY);
        Catalogue catalogue =
                new CatalogueReader(diagnostics, head.sources()).read(documents(files, "catalogue/", diagnostics));
        FactTypes types = FactTypes.of(catalogue);
        Grading grading = document(files, "grading.yaml", diagnostics)
                .map(n -> GradingReader.read(n, types, diagnostics))
                .orElse(new Grading(Map.of(), List.of()));
        Terms terms = new Terms(catalogue, types, grading, head.sources());
        List<SyntaxRule> written = new ArrayList<>();
        files.files().forEach((name, bytes) -> {
            if (name.startsWith("rules/")) {
                DocumentReader.decode(name, bytes, diagnostics)
                        .ifPresent(text -> written.addAll(ruleText.read(name, text, diagnostics)));
            } else if (name.startsWith("tables/")) {
                DocumentReader.decode(name, bytes, diagnostics)
                        .ifPresent(text -> written.addAll(new TableReader(name, terms, diagnostics).read(text)));
            }
        });
        List<Rule> rules = new RuleChecker(terms, diagnostics).check(written);
        Map<String, QuestionTree> trees = trees(files, terms, diagnostics);
        Map<String, Edition.Assumption> assumptions = optional(files, "assumptions.yaml", diagnostics)
                .map(n -> assumptions(n, diagnostics))
                .orElse(Map.of());
        Map<String, Node> cases = named(files, CaseReader.FOLDER, diagnostics);
        if (diagnostics.hasErrors()) {
            return Result.failed(diagnostics);
        }
        Edition unhashed = new Edition(
                head.name(),
                head.title(),
                head.language(),
                head.licence(),
                head.sources(),
                catalogue,
                types,
                rules,
                Levels.of(rules).levels(),
                trees,
                grading,
                assumptions,
                "",
                files.textHash());
        Checks checks = new Checks(
                CaseReader.read(cases, unhashed, diagnostics),
                optional(files, KnownFindingReader.FILE, diagnostics)
                        .map(n -> KnownFindingReader.read(n, unhashed, diagnostics))
                        .orElse(List.of()),
                optional(files, GridPlanReader.FILE, diagnostics)
                        .flatMap(n -> GridPlanReader.read(n, unhashed, diagnostics)));
        if (diagnostics.hasErrors()) {
            return Result.failed(diagnostics);
        }
        Map<String, byte[]> caseBytes = new TreeMap<>(files.files());
        caseBytes.keySet().removeIf(name -> !name.startsWith(CaseReader.FOLDER));
        return new Result(Optional.of(MeaningHash.sign(unhashed, caseBytes)), checks, diagnostics);
    }

    private static Optional<Node> optional(EditionFiles files, String name, Diagnostics diagnostics) {
        return files.files().containsKey(name) ? document(files, name, diagnostics) : Optional.empty();
    }

    private static Optional<Node> document(EditionFiles files, String name, Diagnostics diagnostics) {
        byte[] bytes = files.files().get(name);
        if (bytes == null) {
            diagnostics.add(Message.MISSING_FILE, Place.ofFile(name), name, name);
            return Optional.empty();
        }
        return DocumentReader.read(name, bytes, diagnostics);
    }

    private static List<Node> documents(EditionFiles files, String folder, Diagnostics diagnostics) {
        return List.copyOf(named(files, folder, diagnostics).values());
    }

    private static Map<String, Node> named(EditionFiles files, String folder, Diagnostics diagnostics) {
        Map<String, Node> nodes = new TreeMap<>();
        files.files().forEach((name, bytes) -> {
            if (name.startsWith(folder)) {
                DocumentReader.read(name, bytes, diagnostics).ifPresent(node -> nodes.put(name, node));
            }
        });
        return nodes;
    }

    private static Map<String, QuestionTree> trees(EditionFiles files, Terms terms, Diagnostics diagnostics) {
        Map<String, QuestionTree> trees = new TreeMap<>();
        for (Node node : documents(files, "trees/", diagnostics)) {
            new TreeReader(terms, diagnostics).read(node).ifPresent(tree -> {
                if (trees.putIfAbsent(tree.id(), tree) != null) {
                    diagnostics.add(Message.DUPLICATE_ID, node.place(), tree.id(), "tree id", "another file");
                }
            });
        }
        return trees;
    }

    private static Map<String, Edition.Assumption> assumptions(Node node, Diagnostics diagnostics) {
        Map<String, Edition.Assumption> out = new TreeMap<>();
        MapReader file = MapReader.of(node, "assumptions.yaml", diagnostics);
        for (Node item : file.list("assumptions")) {
            AssumptionReader.read(item, diagnostics).ifPresent(a -> {
                if (out.putIfAbsent(a.id(), a) != null) {
                    diagnostics.add(Message.DUPLICATE_ID, item.place(), a.id(), "assumption", "the same file");
                }
            });
        }
        file.noMore();
        return out;
    }

    /** What stands in edition.yaml. */
    private record Header(
            String name, String title, String language, String licence, Map<String, Edition.Source> sources) {

        static final Header EMPTY = new Header("", "", "", "", Map.of());

        static Header read(Node node, Diagnostics diagnostics) {
            MapReader map = MapReader.of(node, "edition.yaml", diagnostics);
            Map<String, Edition.Source> sources = new TreeMap<>();
            for (Node item : map.list("sources")) {
                MapReader s = MapReader.of(item, "a source", diagnostics);
                String seen = s.required("seen");
                if (!seen.equals("yes") && !seen.equals("from memory")) {
                    diagnostics.add(
                            Message.UNKNOWN_REFERENCE, item.place(), seen, "way of seeing", "Write yes or from memory");
                }
                Edition.Source source = new Edition.Source(
                        s.required("id"),
                        s.required("title"),
                        (int) s.number("year", 0),
                        s.text("locator"),
                        seen.equals("yes"));
                s.noMore();
                if (sources.putIfAbsent(source.id(), source) != null) {
                    diagnostics.add(Message.DUPLICATE_ID, item.place(), source.id(), "source", "the same file");
                }
            }
            Header header = new Header(
                    map.id("name"), map.required("title"), map.required("language"), map.required("licence"), sources);
            map.noMore();
            return header;
        }
    }
}

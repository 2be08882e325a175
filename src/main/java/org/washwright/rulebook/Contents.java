package org.washwright.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.engine.Words;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.FieldType;

/**
 * What an edition holds, counted.
 *
 * @param licence licence of its content
 * @param counts what there is, the important first
 * @param sources what it cites, most cited first
 * @param trees its question trees
 * @param assumptions what it takes for granted
 */
record Contents(
        String licence, List<Count> counts, List<Source> sources, List<TreeView> trees, List<Assumed> assumptions) {

    /** A number of things; {@code path} leads to them from the address of the edition. */
    record Count(String label, long number, String path) {}

    /** Something cited, and by how many rules. */
    record Source(String title, int year, String locator, boolean seen, long rules) {}

    /** A planning value. */
    record Assumed(String label, String value, String source) {}

    static Contents of(Edition edition, int cases) {
        return new Contents(
                edition.licence(),
                counts(edition, cases),
                sources(edition),
                TreeView.all(edition),
                assumptions(edition));
    }

    /** How many sources were cited from memory. */
    public long fromMemory() {
        return sources.stream().filter(s -> !s.seen()).count();
    }

    private static List<Count> counts(Edition edition, int cases) {
        Catalogue catalogue = edition.catalogue();
        List<Count> counts = new ArrayList<>();
        List<String> tables = edition.rules().stream()
                .map(r -> r.place().file())
                .filter(f -> f.endsWith(".csv"))
                .toList();
        counts.add(new Count("rules", edition.rules().size(), "/rules"));
        counts.add(
                new Count("of them over the composed line", edition.lineRules().size(), "/rules"));
        counts.add(new Count("tables", tables.stream().distinct().count(), "/rules"));
        counts.add(new Count("rows in tables", tables.size(), "/rules"));
        counts.add(new Count("processes", catalogue.leaves().size(), "/glossary#processes"));
        counts.add(new Count("stages", catalogue.stages().size(), "/glossary#kind-stage"));
        for (Map.Entry<String, String> kind : Map.of(
                        "soil", "soils",
                        "substrate", "substrates",
                        "medium", "media",
                        "hazard", "hazards",
                        "test-method", "test methods")
                .entrySet()
                .stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .toList()) {
            counts.add(new Count(
                    kind.getValue(), catalogue.ofKind(kind.getKey()).size(), "/glossary#kind-" + kind.getKey()));
        }
        counts.add(new Count("question trees", edition.trees().size(), "/trees"));
        counts.add(new Count("reference cases", cases, "/cases"));
        return counts;
    }

    private static List<Source> sources(Edition edition) {
        Map<String, Long> cited = new TreeMap<>();
        edition.rules().stream()
                .flatMap(r -> r.sources().stream().map(Rule.Cite::source).distinct())
                .forEach(source -> cited.merge(source, 1L, Long::sum));
        return edition.sources().values().stream()
                .map(s -> new Source(s.title(), s.year(), s.locator(), s.seen(), cited.getOrDefault(s.id(), 0L)))
                .sorted(Comparator.comparing(Source::rules).reversed().thenComparing(Source::title))
                .toList();
    }

    private static List<Assumed> assumptions(Edition edition) {
        return edition.assumptions().values().stream()
                .map(a -> new Assumed(
                        a.label(),
                        new Words(edition.catalogue())
                                .value(a.value(), FieldType.number(a.dimension()), Words.COMPUTED),
                        source(edition, a.source())))
                .toList();
    }

    private static String source(Edition edition, String text) {
        String id = text.contains(",") ? text.substring(0, text.indexOf(',')) : text;
        return edition.sources().containsKey(id) ? Glossary.cited(edition, text).words() : text;
    }
}

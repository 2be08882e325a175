package org.washwright.generate;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.catalogue.Kind;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;

/**
 * The small edition with nothing left open: every property of every term is one value, or left out and so not applicable.
 * Which it is, is drawn for each edition anew. Each edition has conclusions of its own, so that rules of several editions
 * can be compiled together and never meet.
 */
public final class KnownEdition {

    private static final String WINDOWS = "group: no, phrase: wash, windows: {temperature: 20..80 °C}";

    /** What formulas assume: where it is missing, a computed fact would be left open. */
    private static final String ASSUMPTIONS = """
            assumptions:
              - {id: hours-per-shift, label: hours, value: 8 h, source: assumption}
              - {id: mixing-factor, label: mixing, value: 4, source: assumption}
              - {id: diffusivity, label: diffusivity, value: 1000 um2/s, source: assumption}
              - {id: rinse-temperature, label: rinse, value: 20 °C, source: assumption}
              - {id: wetting-angle, label: angle, value: 20 °, source: assumption}
              - {id: bath-surface-tension, label: tension, value: 30 mN/m, source: assumption}
              - {id: immersion-depth, label: depth, value: 0.3 m, source: assumption}
            """;

    /** A process without the first two is refused; how much air stays in a hole hangs on the third. */
    private static final Set<String> NEEDED = Set.of("medium", "technique", "fills");

    private final Random random;
    private final Map<String, Kind> kinds = SmallEdition.with("").catalogue().kinds();

    private KnownEdition(Random random) {
        this.random = random;
    }

    /** The files of an edition without rules. */
    public static Map<String, String> texts(int number, Random random) {
        KnownEdition maker = new KnownEdition(random);
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put("assumptions.yaml", ASSUMPTIONS);
        maker.kinds.forEach((id, kind) -> {
            if (!kind.properties().isEmpty() && !id.equals("process")) {
                StringBuilder terms = new StringBuilder("kind: " + id + "\nterms:\n");
                for (String letter : List.of("a", "b", "c")) {
                    terms.append("  - {id: " + id + "-" + letter + ", name: " + letter + ", properties: "
                            + maker.properties(kind) + "}\n");
                }
                texts.put("catalogue/" + id + "-terms.yaml", terms.toString());
            }
        });
        StringBuilder processes = new StringBuilder("kind: process\nterms:\n  - {id: any, name: any, group: yes}\n"
                + "  - {id: water, name: water, parent: any, group: yes}\n"
                + "  - {id: oil, name: oil, parent: any, group: yes}\n");
        for (String id : List.of("water-a", "water-b", "oil-a", "oil-b")) {
            processes.append("  - {id: " + id + ", name: " + id + ", parent: " + id.substring(0, id.indexOf('-')) + ", "
                    + WINDOWS + ", properties: " + maker.properties(maker.kinds.get("process")) + "}\n");
        }
        texts.put("catalogue/process-terms.yaml", processes.toString());
        StringBuilder conclusions = new StringBuilder("kind: conclusion\nterms:\n");
        for (String letter : List.of("a", "b", "c", "d", "e", "f")) {
            conclusions.append("  - {id: c" + number + "-" + letter + ", name: " + letter + "}\n");
        }
        texts.put("catalogue/conclusion-terms.yaml", conclusions.toString());
        return texts;
    }

    /** Reads these files with these rules. */
    public static Edition with(Map<String, String> texts, String drl) {
        Map<String, String> all = new TreeMap<>(texts);
        all.put("rules/all.drl", drl);
        return SmallEdition.read(SmallEdition.files(all));
    }

    private String properties(Kind kind) {
        StringBuilder out = new StringBuilder();
        kind.properties().values().forEach(p -> {
            if (NEEDED.contains(p.id()) || random.nextInt(6) > 0) {
                out.append(out.isEmpty() ? "" : ", ")
                        .append(p.id())
                        .append(": ")
                        .append(value(p.type()));
            }
        });
        return "{" + out + "}";
    }

    private String value(FieldType type) {
        if (type instanceof FieldType.NumberType n) {
            List<String> grid = Grid.of(n.dimension());
            return Grid.text(n.dimension(), grid.get(random.nextInt(grid.size())));
        }
        FieldType.TermType term = (FieldType.TermType) type;
        return term.isFlag()
                ? random.nextBoolean() ? "yes" : "no"
                : term.kind() + "-" + List.of("a", "b", "c").get(random.nextInt(3));
    }
}

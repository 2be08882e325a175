package org.washwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBuilder;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/**
 * Rules and tasks made up for timing, the same for every contender. A rule asks for a soil with more than an amount; two of
 * three ask also for a material that is harder than a limit, and one of these that no feature is too deep for its width.
 *
 * <p>Everything is known, so that evaluators with two truth values find the same matches. Only the first terms of each kind
 * occur in tasks: rules over the others are there and never touched.
 */
public final class Synthetic {

    static final int TASKS = 200;
    private static final int TERMS_IN_TASKS = 10;
    private static final int LIST = 4;

    /** One rule: indexes of terms, limits in the unit of its field, and how many patterns it has. */
    record Spec(String id, int soil, int amount, int material, int hardness, int feature, int depth, int patterns) {}

    /** A soil as plain evaluators see it. */
    public record Soil(String kind, double amount) {
        public String getKind() {
            return kind;
        }

        public double getAmount() {
            return amount;
        }
    }

    /** A material as plain evaluators see it. */
    public record Material(String substrate, double hardness) {
        public String getSubstrate() {
            return substrate;
        }

        public double getHardness() {
            return hardness;
        }
    }

    /** A feature as plain evaluators see it. */
    public record Feature(String kind, double slenderness) {
        public String getKind() {
            return kind;
        }

        public double getSlenderness() {
            return slenderness;
        }
    }

    /** A task as plain evaluators see it. */
    public record Task(List<Soil> soils, List<Material> materials, List<Feature> features) {}

    final List<Spec> rules = new ArrayList<>();
    final List<Task> tasks = new ArrayList<>();
    private final int terms;

    /**
     * Rules and tasks.
     *
     * @param count how many rules
     * @param spread over how many times the terms of the tasks the rules are spread; 1: every rule may be touched
     */
    Synthetic(int count, int spread) {
        terms = TERMS_IN_TASKS * spread;
        Random random = new Random(count);
        for (int i = 0; i < count; i++) {
            // Each term of soils gets its equal share of the rules, so a task touches count / spread of them.
            rules.add(new Spec(
                    String.format(Locale.ROOT, "R-%05d", i),
                    i % terms,
                    random.nextInt(8),
                    random.nextInt(TERMS_IN_TASKS),
                    20 + random.nextInt(40),
                    random.nextInt(TERMS_IN_TASKS),
                    1 + random.nextInt(12),
                    1 + i / terms % 3));
        }
        random = new Random(7);
        for (int i = 0; i < TASKS; i++) {
            List<Soil> soils = new ArrayList<>();
            List<Material> materials = new ArrayList<>();
            List<Feature> features = new ArrayList<>();
            for (int k = 0; k < LIST; k++) {
                soils.add(new Soil("soil-" + random.nextInt(TERMS_IN_TASKS), random.nextInt(10)));
                materials.add(new Material("substrate-" + random.nextInt(TERMS_IN_TASKS), 20 + random.nextInt(45)));
                features.add(new Feature("feature-" + random.nextInt(TERMS_IN_TASKS), 1 + random.nextInt(12)));
            }
            tasks.add(new Task(soils, materials, features));
        }
    }

    /** The rules in the language of experts, in files of at most a thousand. */
    Map<String, String> drl() {
        Map<String, String> files = new TreeMap<>();
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < rules.size(); i++) {
            Spec r = rules.get(i);
            out.append("rule \"" + r.id() + "\" @id(\"" + r.id() + "\") @basis(\"common practice\") when\n");
            out.append("  Soil(kind == \"soil-" + r.soil() + "\", amount > \"" + r.amount() + " g/m2\")\n");
            if (r.patterns() > 1) {
                out.append("  Material(substrate == \"substrate-" + r.material() + "\", hardness > \"" + r.hardness()
                        + " HRC\")\n");
            }
            if (r.patterns() > 2) {
                out.append(
                        "  not Feature(kind == \"feature-" + r.feature() + "\", slenderness > " + r.depth() + ")\n");
            }
            out.append("then caution(\"hazard-a\", \"Mind it.\"); end\n");
            if (i % 1000 == 999 || i == rules.size() - 1) {
                files.put("rules/r" + i / 1000 + ".drl", out.toString());
                out.setLength(0);
            }
        }
        return files;
    }

    /** The edition with these rules. */
    Edition edition() {
        return SmallEdition.read(SmallEdition.files(editionTexts()));
    }

    /** The files of that edition. */
    Map<String, String> editionTexts() {
        Map<String, String> texts = SmallEdition.texts();
        texts.put("catalogue/soil-terms.yaml", terms("soil", terms));
        texts.put("catalogue/substrate-terms.yaml", terms("substrate", TERMS_IN_TASKS));
        texts.put("catalogue/feature-terms.yaml", terms("feature", TERMS_IN_TASKS));
        texts.putAll(drl());
        return texts;
    }

    private static String terms(String kind, int count) {
        StringBuilder out = new StringBuilder("kind: " + kind + "\nterms:\n");
        // The attributes that the small edition declares name these.
        for (String letter : List.of("a", "b", "c")) {
            out.append("  - {id: " + kind + "-" + letter + ", name: " + kind + " " + letter + "}\n");
        }
        for (int i = 0; i < count; i++) {
            out.append("  - {id: " + kind + "-" + i + ", name: " + kind + " " + i + "}\n");
        }
        return out.toString();
    }

    /** The tasks as facts of the edition. */
    List<List<Fact>> facts(Edition edition) {
        return texts().stream()
                .map(text -> FactBuilder.build(Starter.task(edition, text), edition, Map.of(), new Diagnostics())
                        .all())
                .toList();
    }

    /** The tasks as documents. */
    List<String> texts() {
        List<String> texts = new ArrayList<>();
        for (Task t : tasks) {
            StringBuilder out = new StringBuilder("title: t\nsoils:\n  open: no\n  list:\n");
            t.soils().forEach(s -> out.append("  - {kind: " + s.kind() + ", amount: " + s.amount() + " g/m2}\n"));
            out.append("materials:\n  open: no\n  list:\n");
            t.materials()
                    .forEach(m -> out.append(
                            "  - {substrate: " + m.substrate() + ", hardness: " + m.hardness() + " HRC}\n"));
            out.append("features:\n  open: no\n  list:\n");
            t.features()
                    .forEach(f -> out.append(
                            "  - {kind: " + f.kind() + ", depth: " + f.slenderness() + " mm, diameter: 1 mm}\n"));
            texts.add(out.toString());
        }
        return texts;
    }
}

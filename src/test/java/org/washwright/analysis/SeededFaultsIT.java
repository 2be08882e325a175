package org.washwright.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.cases.Case;
import org.washwright.cases.CaseReader;
import org.washwright.cases.CaseRunner;
import org.washwright.drools.DrlReader;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/**
 * Puts faults into a hundred rules of the starter rulebook and asks whether the checker, the examination or the reference cases find them, each
 * with a task that really fares otherwise. The proposed cases come from the edition without the fault.
 */
class SeededFaultsIT {

    /** Drawn once the code was finished. */
    private static final long SEED = 20261128L;

    private static final int EACH = 20;
    private static final double FOUND = 0.95;
    private static final Path REPORT = Path.of("target", "seeded-faults.txt");

    /** Files of rules that make an edition of some hundred rules: the whole rulebook would take too long each time. */
    private static final List<String> HUNDRED = List.of(
            "rules/demand/cleanliness.drl",
            "rules/line/following-operation.drl",
            "rules/line/lines.drl",
            "rules/material/materials.drl",
            "rules/material/platings-and-limits.drl",
            "rules/shape/geometry.drl",
            "rules/shape/holes.drl",
            "rules/soil/soils.drl",
            "tables/against-technique.csv",
            "tables/how-to-prove.csv",
            "tables/medium-for-soil.csv",
            "tables/reach-and-fineness.csv");

    /** Processes of that edition: one or two of each group. */
    private static final Set<String> PROCESSES = Set.of(
            "neutral-spray",
            "neutral-ultrasonic",
            "neutral-injection",
            "neutral-lance",
            "alkaline-ultrasonic",
            "alkaline-spray",
            "alkaline-soak",
            "alkaline-cycling",
            "anodic-alkaline",
            "electrolytic-alkaline",
            "acid-pickling",
            "phosphoric-cleaning",
            "emulsion-soak",
            "hydrocarbon-vacuum",
            "chlorinated-vapour",
            "modified-alcohol-vacuum",
            "hydrofluoroether-vapour",
            "semi-aqueous-immersion",
            "solvent-wipe",
            "steam-jet",
            "co2-snow",
            "co2-pellets",
            "grit-blasting",
            "plasma");

    private static String withFewProcesses(String text) {
        StringBuilder out = new StringBuilder();
        for (String block : text.split("(?m)^(?=  - id: )")) {
            String id = block.startsWith("  - id: ")
                    ? block.lines().findFirst().orElseThrow().substring(8)
                    : "";
            if (id.isEmpty() || PROCESSES.contains(id)) {
                out.append(block);
            }
        }
        return out.toString();
    }

    /**
     * What the editions are made of. Case files stay out: a case that names a term would refuse the edition for its own sake.
     */
    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        Starter.files().files().forEach((name, bytes) -> {
            boolean rules = name.startsWith("rules/") || name.startsWith("tables/");
            boolean checks = name.startsWith(CaseReader.FOLDER) || name.equals("known-findings.yaml");
            if (!checks && (!rules || HUNDRED.stream().anyMatch(name::startsWith))) {
                String text = FaultFinder.text(bytes);
                texts.put(name, name.equals("catalogue/processes.yaml") ? withFewProcesses(text) : text);
            }
        });
        return texts;
    }

    @Test
    void nineteen_of_twenty_faults_are_found() throws IOException {
        Map<String, String> texts = texts();
        Edition clean = SmallEdition.read(SmallEdition.files(texts));
        assertTrue(clean.rules().size() >= 100, () -> clean.rules().size() + " rules");
        EditionReader.Result whole = new EditionReader(new DrlReader()).read(Starter.files());
        Examination examination = new Examiner(clean, FaultFinder.AS_OF, Examiner.USUAL_BUDGET)
                .examine(whole.checks().known().stream()
                        .filter(k ->
                                k.rules().stream().allMatch(r -> clean.rule(r).isPresent()))
                        .toList());
        assertEquals(List.of(), examination.open(), "findings on the edition without a fault");
        String proposed = new Proposals(clean).yaml(examination.examples());
        List<Case> committed = holding(whole, clean);
        assertTrue(committed.size() >= 100, () -> committed.size() + " cases");
        FaultFinder finder = new FaultFinder(clean, committed, FaultFinder.cases(proposed, clean));
        List<Verdict> verdicts = new ArrayList<>();
        for (Mutant mutant : mutants(clean, texts)) {
            verdicts.add(finder.look(mutant));
        }
        report(verdicts);
        List<Verdict> real =
                verdicts.stream().filter(v -> v.by() != Verdict.By.EQUIVALENT).toList();
        long missed = real.stream().filter(v -> v.by() == Verdict.By.NOBODY).count();
        assertTrue(real.size() >= 120, () -> real.size() + " faults");
        assertTrue(real.size() - missed >= FOUND * real.size(), () -> missed + " missed, see " + REPORT);
    }

    /** Cases of the whole rulebook that hold on the smaller edition too: the others would fail without any fault. */
    private static List<Case> holding(EditionReader.Result whole, Edition clean) {
        Set<String> missing = new HashSet<>();
        whole.edition().orElseThrow().catalogue().leaves().stream()
                .map(leaf -> leaf.id())
                .filter(id -> !PROCESSES.contains(id))
                .forEach(missing::add);
        CaseRunner runner = new CaseRunner(Assessor.of(clean, SweepInference.factory()), FaultFinder.AS_OF);
        return whole.checks().cases().stream()
                .filter(c -> c.expectations().stream()
                        .noneMatch(e ->
                                Arrays.stream(e.toString().split("[^a-z0-9-]+")).anyMatch(missing::contains)))
                .filter(c -> runner.run(c).holds())
                .toList();
    }

    /** The same number of faults of each kind, in rules drawn at random, none twice. */
    private static List<Mutant> mutants(Edition clean, Map<String, String> texts) {
        Random random = new Random(SEED);
        List<Mutant> out = new ArrayList<>();
        Set<Map<String, String>> known = new HashSet<>();
        for (Fault fault : Fault.values()) {
            int made = 0;
            for (int tried = 0; made < EACH && tried < 50 * EACH; tried++) {
                Rule rule = clean.rules().get(random.nextInt(clean.rules().size()));
                Optional<Mutant> mutant = fault.in(rule, clean, texts, random);
                if (mutant.isPresent() && known.add(mutant.get().texts())) {
                    out.add(mutant.get());
                    made++;
                }
            }
        }
        return out;
    }

    private static void report(List<Verdict> verdicts) throws IOException {
        Map<Fault, Map<Verdict.By, Integer>> counts = new EnumMap<>(Fault.class);
        verdicts.forEach(v -> counts.computeIfAbsent(v.mutant().fault(), k -> new EnumMap<>(Verdict.By.class))
                .merge(v.by(), 1, Integer::sum));
        StringBuilder out = new StringBuilder("seed " + SEED + ", " + verdicts.size() + " faults\n");
        counts.forEach((fault, by) -> out.append(fault).append("  ").append(by).append('\n'));
        out.append('\n');
        verdicts.stream()
                .sorted((a, b) -> b.by().compareTo(a.by()))
                .forEach(v -> out.append(v).append('\n'));
        Files.createDirectories(REPORT.getParent());
        Files.writeString(REPORT, out.toString());
    }
}

package org.washwright.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.washwright.cases.Case;
import org.washwright.cases.CaseReader;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/**
 * Puts faults into the starter rulebook and asks whether the checker, the examination or the reference cases find them, each
 * with a task that really fares otherwise. The proposed cases come from the edition without the fault.
 */
class SeededFaultsIT {

    /** Drawn once the code was finished. */
    private static final long SEED = 20261128L;

    private static final int EACH = 20;
    private static final double FOUND = 0.95;
    private static final Path REPORT = Path.of("target", "seeded-faults.txt");

    /** Case files stay out of the faulty editions: a case that names a term would refuse the edition for its own sake. */
    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        Starter.files().files().forEach((name, bytes) -> {
            if (!name.startsWith(CaseReader.FOLDER)) {
                texts.put(name, FaultFinder.text(bytes));
            }
        });
        return texts;
    }

    @Test
    void nineteen_of_twenty_faults_are_found() throws IOException {
        Map<String, String> texts = texts();
        Edition clean = SmallEdition.read(SmallEdition.files(texts));
        EditionReader.Result whole = new EditionReader(new DrlReader()).read(Starter.files());
        Examination examination = new Examiner(clean, FaultFinder.AS_OF, Examiner.USUAL_BUDGET)
                .examine(whole.checks().known());
        assertEquals(List.of(), examination.open(), "findings on the edition without a fault");
        String proposed = new Proposals(clean).yaml(examination.examples());
        List<Case> committed = whole.checks().cases();
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

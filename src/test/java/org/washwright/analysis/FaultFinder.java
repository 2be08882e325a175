package org.washwright.analysis;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.cases.Case;
import org.washwright.cases.CaseReader;
import org.washwright.cases.CaseResult;
import org.washwright.cases.CaseRunner;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.drools.DrlReader;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Op;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;
import org.washwright.task.CleaningTask;

/** Looks for a fault as an author would: checks the files, runs the cases, examines the rule. */
final class FaultFinder {

    static final String AS_OF = "2026-11-25";

    private final Edition clean;
    private final Assessor before;
    private final Space space;
    private final List<Case> cases;

    FaultFinder(Edition clean, List<Case> committed, List<Case> proposed) {
        this.clean = clean;
        this.before = Assessor.of(clean, SweepInference.factory());
        this.space = new Space(clean);
        this.cases = new ArrayList<>(committed);
        cases.addAll(proposed);
    }

    static List<Case> cases(String yaml, Edition edition) {
        Diagnostics diagnostics = new Diagnostics();
        Map<String, Node> documents = new TreeMap<>();
        String file = CaseReader.FOLDER + "proposed.yaml";
        documents.put(file, DocumentReader.read(file, yaml, diagnostics).orElseThrow());
        List<Case> cases = CaseReader.read(documents, edition, diagnostics);
        if (!diagnostics.all().isEmpty()) {
            throw new AssertionError(diagnostics.all());
        }
        return cases;
    }

    Verdict look(Mutant mutant) {
        Map<String, String> texts = new TreeMap<>(mutant.texts());
        EditionReader.Result read = new EditionReader(new DrlReader()).read(SmallEdition.files(texts));
        Optional<Diagnostic> said =
                read.diagnostics().all().stream().filter(d -> names(d, mutant)).findFirst();
        if (said.isPresent()) {
            return new Verdict(mutant, Verdict.By.CHECKER, said.get().toString());
        }
        Edition after = read.edition()
                .orElseThrow(() -> new AssertionError(mutant + " is refused for something else: "
                        + read.diagnostics().all()));
        Optional<String> same = equivalent(mutant, after);
        if (same.isPresent()) {
            return new Verdict(mutant, Verdict.By.EQUIVALENT, same.get());
        }
        return byCases(mutant, after)
                .or(() -> byExamination(mutant, after))
                .orElseGet(() -> new Verdict(mutant, Verdict.By.NOBODY, ""));
    }

    /** A diagnostic that stands in the faulty rule's text or names the rule. */
    private static boolean names(Diagnostic d, Mutant mutant) {
        return d.place().file().equals(Mutant.FILE) || d.text().contains("\"" + mutant.rule() + "\"");
    }

    /** Why a fault changes nothing; empty when it may. */
    private Optional<String> equivalent(Mutant mutant, Edition after) {
        Rule was = clean.rule(mutant.rule()).orElseThrow();
        Rule is = after.rule(mutant.rule()).orElseThrow();
        if (after.rules().size() != clean.rules().size()) {
            return new Deadness(clean, space).of(was).map(why -> "both can never fire, proved: " + why);
        }
        if (RuleText.canonical(was).equals(RuleText.canonical(is))) {
            return Optional.of("the rule means the same to the last bit");
        }
        if (mutant.fault() == Fault.WIDEN && onlyMore(was, is)) {
            return Optional.of("what was added can never be met: the rule with that alone never fires, proved");
        }
        Optional<String> finite = mutant.fault() == Fault.WIDEN ? new FiniteProof(clean).of(was, is) : Optional.empty();
        if (finite.isPresent()) {
            return finite;
        }
        boolean sameFrame =
                was.patterns().size() == is.patterns().size() && told(was).equals(told(is));
        if (!sameFrame) {
            return Optional.empty();
        }
        for (int i = 0; i < was.patterns().size(); i++) {
            Condition a = was.patterns().get(i).condition();
            Condition b = is.patterns().get(i).condition();
            boolean same = a.equals(b)
                    || !joins(a)
                            && !joins(b)
                            && space.implies(was.patterns().get(i).type(), a, b)
                            && space.implies(was.patterns().get(i).type(), b, a);
            if (!same || was.patterns().get(i).sign() != is.patterns().get(i).sign()) {
                return Optional.empty();
            }
        }
        return Optional.of(
                "each condition holds of the same facts: every term of the catalogue, every process and every"
                        + " range between thresholds was gone through");
    }

    /** True when a list of terms grew by terms on which alone the rule provably never fires. */
    private boolean onlyMore(Rule was, Rule is) {
        for (int i = 0; i < was.patterns().size(); i++) {
            List<Condition.Test> a = was.patterns().get(i).condition().tests().toList();
            List<Condition.Test> b = is.patterns().get(i).condition().tests().toList();
            for (int j = 0; j < a.size() && a.size() == b.size(); j++) {
                if (!a.get(j).equals(b.get(j))
                        && a.get(j).operand() instanceof Condition.Operand.Terms x
                        && b.get(j).operand() instanceof Condition.Operand.Terms y) {
                    TreeSet<String> added = new TreeSet<>(y.ids());
                    added.removeAll(x.ids());
                    Condition.Test alone =
                            new Condition.Test(b.get(j).field(), Op.IN, new Condition.Operand.Terms(added));
                    Rule rest = Rewrites.replaced(was, i, a.get(j), t -> alone);
                    return new Deadness(clean, space).of(rest).isPresent();
                }
            }
        }
        return false;
    }

    private static boolean joins(Condition c) {
        return c.tests().anyMatch(Space::isJoin);
    }

    private static String told(Rule rule) {
        String text = RuleText.canonical(rule);
        return text.substring(text.indexOf("\nthen\n"));
    }

    private Optional<Verdict> byCases(Mutant mutant, Edition after) {
        Assessor changed = Assessor.of(after, SweepInference.factory());
        CaseRunner runner = new CaseRunner(changed, AS_OF);
        for (Case c : cases) {
            boolean about = c.expectations().stream().anyMatch(e -> e.rules().contains(mutant.rule()));
            if (!about) {
                continue;
            }
            CaseResult result = runner.run(c);
            Optional<CaseResult.Check> failed = result.unmet().stream()
                    .filter(x -> x.expectation().rules().contains(mutant.rule()))
                    .findFirst();
            if (failed.isPresent() && differs(c.task(), changed, c.asOf().orElse(AS_OF))) {
                return Optional.of(new Verdict(
                        mutant,
                        Verdict.By.CASES,
                        c.id() + " expects " + failed.get().expected() + "; found "
                                + failed.get().found()));
            }
        }
        return Optional.empty();
    }

    private Optional<Verdict> byExamination(Mutant mutant, Edition after) {
        Assessor changed = Assessor.of(after, SweepInference.factory());
        Examiner examiner = new Examiner(after, AS_OF, Examiner.USUAL_BUDGET);
        return examiner.about(after.rule(mutant.rule()).orElseThrow()).stream()
                .filter(f -> f.rules().contains(mutant.rule()))
                .filter(f -> f.witness()
                        .map(task -> differs(task, changed, f.asOf()))
                        .orElse(false))
                .findFirst()
                .map(f -> new Verdict(mutant, Verdict.By.EXAMINATION, f.kind() + ": " + f.words()));
    }

    /** True when a task really fares otherwise with the fault. */
    private boolean differs(CleaningTask task, Assessor changed, String asOf) {
        return !fares(task, before, asOf).equals(fares(task, changed, asOf));
    }

    private static TreeSet<String> fares(CleaningTask task, Assessor assessor, String asOf) {
        TreeSet<String> out = new TreeSet<>();
        try {
            assessor.outcome(task, Wishes.on(asOf))
                    .firings()
                    .forEach(f -> out.add(f.rule().id() + f.certain() + f.line() + f.facts() + f.findings()));
        } catch (RefusedTask e) {
            out.add("refused " + e.diagnostics());
        }
        return out;
    }

    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}

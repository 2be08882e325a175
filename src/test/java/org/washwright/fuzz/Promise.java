package org.washwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.exchange.OneFile;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.Levels;
import org.washwright.rule.MeaningHash;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.Rule;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.SyntaxRule;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/** What every reader promises, whatever bytes it gets. */
final class Promise {

    private static final Map<String, byte[]> SOUND =
            SmallEdition.files(SmallEdition.texts()).files();

    private static final byte[] TASK = """
            title: t
            soils: [{kind: soil-a, amount: 1..3 g/m2}, {kind: [soil-b, soil-c]}]
            materials: [{substrate: substrate-a, hardness: 31 HRC, porous: yes}, substrate-b]
            features: {open: yes, list: [{kind: feature-a, diameter: 2 mm, depth: 10 mm}, {kind: unknown}]}
            following: {operation: operation-a}
            demand: {residue: '<= 20 mg/m2', waterBreakFree: yes}
            attributes: {att-flag: yes, att-heat: 60 °C}
            """.getBytes(StandardCharsets.UTF_8);

    private static final Edition BASE = SmallEdition.with("");

    /** The terms of a small sound edition. */
    static final Terms TERMS = new Terms(BASE.catalogue(), BASE.types(), BASE.grading(), BASE.sources());

    private Promise() {}

    /** Loads what readers need, because the fuzzer instruments every class and would take that long for a hanging input. */
    static void warmUp() {
        String rule = "rule \"r\" @id(\"R\") @basis(\"common practice\") when Soil(kind == \"soil-a\") then "
                + "caution(\"hazard-a\", \"So.\"); end";
        holds(edition("rules/warm.drl", rule.getBytes(StandardCharsets.UTF_8)).isPresent(), "a sound rule is refused");
        edition("rules/warm.drl", "rule when".getBytes(StandardCharsets.UTF_8));
    }

    /** Rules are taken or refused, and what is taken can be asked. */
    static void rules(Function<Diagnostics, List<SyntaxRule>> reader) {
        Diagnostics diagnostics = new Diagnostics();
        List<Rule> rules = new RuleChecker(TERMS, diagnostics).check(reader.apply(diagnostics));
        complete(diagnostics.all());
        if (!diagnostics.hasErrors()) {
            asked(edition(rules, Map.of()));
        }
    }

    /** A tree is taken or refused, and a task that goes through it is answered. */
    static void tree(byte[] bytes) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<QuestionTree> tree = OneFile.tree("trees/fuzz.yaml", bytes, TERMS, diagnostics);
        complete(diagnostics.all());
        if (tree.isPresent() && !diagnostics.hasErrors()) {
            asked(edition(List.of(), Map.of(tree.get().id(), tree.get())));
        }
    }

    private static Edition edition(List<Rule> rules, Map<String, QuestionTree> trees) {
        return MeaningHash.sign(
                new Edition(
                        BASE.name(),
                        BASE.title(),
                        BASE.language(),
                        BASE.licence(),
                        BASE.sources(),
                        BASE.catalogue(),
                        BASE.types(),
                        rules,
                        Levels.of(rules).levels(),
                        trees,
                        BASE.grading(),
                        BASE.assumptions(),
                        "",
                        BASE.textHash()),
                Map.of());
    }

    private static void asked(Edition edition) {
        Diagnostics diagnostics = new Diagnostics();
        TaskReader.read("task.yaml", TASK, edition, diagnostics).ifPresent(task -> answered(edition, task));
        complete(diagnostics.all());
    }

    /** A sound edition with one file put in or replaced is taken or refused, and what is taken can be asked. */
    static Optional<Edition> edition(String file, byte[] bytes) {
        Map<String, byte[]> files = new TreeMap<>(SOUND);
        files.put(file, bytes);
        return edition(new EditionFiles(files), new Diagnostics());
    }

    /** The same for all files of an edition. */
    static Optional<Edition> edition(EditionFiles files, Diagnostics diagnostics) {
        Optional<Edition> edition =
                new EditionReader(new DrlReader()).read(files, diagnostics).edition();
        complete(diagnostics.all());
        holds(edition.isPresent() != diagnostics.hasErrors(), "an edition is there exactly when there is no error");
        edition.ifPresent(Promise::asked);
        return edition;
    }

    /** A task that was read is answered, or refused with all that contradicts itself. */
    static void answered(Edition edition, CleaningTask task) {
        try {
            byte[] bytes = Assessor.of(edition, ReferenceInterpreter.factory())
                    .assess(task, Starter.WISHES)
                    .bytes();
            holds(bytes.length > 0, "an answer has bytes");
        } catch (RefusedTask refused) {
            holds(!refused.diagnostics().isEmpty(), "a refused task says why");
            complete(refused.diagnostics());
        }
    }

    /** Every message has a place, says what is wrong and what to do, and can forge no line. */
    static void complete(List<Diagnostic> found) {
        for (Diagnostic d : found) {
            holds(!d.place().file().isBlank(), "no file: " + d);
            holds(d.place().line() >= 0 && d.place().column() >= 0, "no place: " + d);
            holds(!d.text().isBlank() && !d.advice().isBlank(), "no words: " + d);
            holds(d.toString().chars().noneMatch(Character::isISOControl), "a control character: " + d);
        }
    }

    static void holds(boolean promise, String what) {
        if (!promise) {
            throw new AssertionError(what);
        }
    }
}

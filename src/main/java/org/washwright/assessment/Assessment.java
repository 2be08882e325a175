package org.washwright.assessment;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Firing;
import org.washwright.engine.Firings;
import org.washwright.engine.Inference;
import org.washwright.engine.Readers;
import org.washwright.engine.Words;
import org.washwright.line.Composer;
import org.washwright.line.ProcessLine;
import org.washwright.line.grading.Grader;
import org.washwright.line.sizing.LineSizer;
import org.washwright.line.sizing.Sized;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** One assessment in the making: facts, firings, lines, points, and the answer frozen from them. */
final class Assessment {

    private static final int FORMAT = 1;

    /** Significant figures that tell any two values apart. */
    private static final int EXACT = 15;

    private final Edition edition;
    private final FactBuilder builder;
    private final Inference taskRules;
    private final Inference lineRules;
    private final CleaningTask task;
    private final Wishes wishes;
    private Weighing weighing;
    private final Map<String, Value> assumptions = new TreeMap<>();

    Assessment(
            Edition edition,
            FactBuilder builder,
            Inference taskRules,
            Inference lineRules,
            CleaningTask task,
            Wishes wishes) {
        this.edition = edition;
        this.builder = builder;
        this.taskRules = taskRules;
        this.lineRules = lineRules;
        this.task = task;
        this.wishes = wishes;
    }

    Outcome outcome() {
        Diagnostics diagnostics = new Diagnostics();
        readWishes(diagnostics);
        FactBase given = builder.build(task, assumptions, asOf(), diagnostics);
        if (diagnostics.hasErrors()) {
            throw new RefusedTask(diagnostics.all());
        }
        Inference.Inferred inferred = taskRules.run(given.all());
        FactBase facts = given.with(inferred.conclusions());
        List<Firing> firings = new ArrayList<>(new Firings(edition).of(inferred, facts, "", 1));
        List<ProcessLine> lines = lines(facts, firings);
        lines.forEach(l -> firings.addAll(l.firings()));
        return new Outcome(edition, facts, firings, lines);
    }

    FrozenAnswer freeze() {
        Designs designs = designs();
        return FrozenAnswer.of(answer(
                designs.outcome(),
                rank(designs.outcome().standing(), designs.grades()),
                designs.grades(),
                designs.sizes()));
    }

    /** Lines sized and graded, before anything is worded. */
    Designs designs() {
        Outcome outcome = outcome();
        Map<String, Grader.Grade> grades = new HashMap<>();
        Map<String, Sized> sizes = new HashMap<>();
        Grader grader = new Grader(edition.grading(), weighing.weights());
        LineSizer sizer = new LineSizer(edition, outcome.facts(), assumptions);
        for (ProcessLine line : outcome.standing()) {
            String id = line.process().id();
            Sized sized = sizer.size(line);
            sizes.put(id, sized);
            grades.put(
                    id,
                    grader.grade(id, outcome.facts().fact("process/" + id).orElseThrow(), outcome.firings(), sized));
        }
        return new Designs(outcome, sizes, grades);
    }

    /**
     * What came of a task, with its lines sized and graded.
     *
     * @param sizes figures of each line that stands, by process
     * @param grades points of each, by process
     */
    record Designs(Outcome outcome, Map<String, Sized> sizes, Map<String, Grader.Grade> grades) {}

    Wanted wanted() {
        Outcome outcome = outcome();
        List<Answer.Question> questions =
                new Questions(edition, outcome.facts(), outcome.firings()).of(outcome.standing());
        return new Wanting(edition, Readers.of(edition), outcome.facts(), outcome.firings(), outcome.lines())
                .of(questions);
    }

    private List<ProcessLine> lines(FactBase facts, List<Firing> firings) {
        Composer composer = new Composer(edition, lineRules, facts, firings);
        List<ProcessLine> lines = new ArrayList<>();
        int next = firings.size() + 1;
        for (ProcessTerm process : edition.catalogue().leaves()) {
            ProcessLine line = composer.compose(process, next);
            next = Math.max(
                    next, line.firings().stream().mapToInt(f -> f.n() + 1).max().orElse(next));
            lines.add(line);
        }
        return lines;
    }

    private static List<ProcessLine> rank(List<ProcessLine> lines, Map<String, Grader.Grade> grades) {
        return lines.stream()
                .sorted(Comparator.comparing((ProcessLine l) -> l.status())
                        .thenComparingDouble(l -> -middle(grades.get(l.process().id())))
                        .thenComparing(l -> l.process().id()))
                .toList();
    }

    private static double middle(Grader.Grade grade) {
        return (grade.total().low() + grade.total().high()) / 2;
    }

    private Answer answer(
            Outcome outcome, List<ProcessLine> ranked, Map<String, Grader.Grade> grades, Map<String, Sized> sizes) {
        FactBase facts = outcome.facts();
        List<Firing> firings = outcome.firings();
        List<ProcessLine> lines = outcome.lines();
        Sentences sentences = new Sentences(edition, firings);
        List<Answer.Candidate> candidates = new ArrayList<>();
        Set<String> figures = new TreeSet<>();
        DesignCards designs = new DesignCards(edition, facts, firings, assumptions, figures);
        CandidateCards cards = new CandidateCards(edition, sentences, designs, figures);
        ranked.forEach(l -> candidates.add(
                cards.of(l, grades.get(l.process().id()), sizes.get(l.process().id()))));
        List<Answer.RuledOut> out = new ArrayList<>();
        lines.stream()
                .filter(l -> l.status() == ProcessLine.Status.RULED_OUT)
                .forEach(l -> out.add(
                        new Answer.RuledOut(l.process().id(), l.process().term().name(), Sentences.of(l.refusals()))));
        List<Fact> all = new ArrayList<>(facts.all());
        lines.forEach(l -> all.addAll(l.facts()));
        FindingCards findings = new FindingCards(edition);
        Citations citations = new Citations(edition);
        List<Answer.Fact> factCards = new FactCards(edition, firings, figures, placedBy(lines)).of(all);
        Answer.Request request = request();
        return new Answer(
                FORMAT,
                request,
                Hashes.sha256(Hashes.canonical(request)),
                Headlines.of(ranked, out.size()),
                new Judging(edition, outcome, ranked, grades).of(task),
                factCards,
                firings.stream().map(findings::firing).toList(),
                candidates,
                out,
                sentences.cautions(),
                new Questions(edition, facts, firings).of(ranked),
                Doubts.of(firings, ranked),
                sentences.verifications(),
                Rankings.of(ranked, grades, weighing, wishes.seed()),
                designs.kinds(),
                designs.inputs(),
                citations.rules(firings),
                citations.sources(firings, factCards));
    }

    private static Map<String, List<Integer>> placedBy(List<ProcessLine> lines) {
        Map<String, List<Integer>> placedBy = new HashMap<>();
        lines.forEach(l -> l.steps().forEach(s -> placedBy.put(s.factId(), s.firings())));
        return placedBy;
    }

    private Answer.Request request() {
        List<Answer.Weight> weightList = new ArrayList<>();
        weighing.weights().forEach((area, weight) -> weightList.add(new Answer.Weight(area, weight)));
        List<Answer.Comparison> comparisons = new ArrayList<>();
        wishes.comparisons().forEach((pair, ratio) -> comparisons.add(new Answer.Comparison(pair, ratio)));
        List<Answer.Assumption> changed = new ArrayList<>();
        Words words = new Words(edition.catalogue());
        assumptions.forEach((id, value) -> changed.add(new Answer.Assumption(
                id,
                words.value(
                        value, FieldType.number(edition.assumptions().get(id).dimension()), EXACT))));
        return new Answer.Request(
                CanonicalTask.of(task),
                edition.name(),
                edition.meaningHash(),
                edition.textHash(),
                weightList,
                comparisons,
                changed,
                wishes.asOf(),
                wishes.seed(),
                Program.text());
    }

    private void readWishes(Diagnostics diagnostics) {
        weighing = Weighing.of(edition.grading(), wishes, diagnostics);
        wishes.assumptions().forEach((id, text) -> {
            Place place = new Place("-", 0, 0, "/assumptions/" + id);
            Edition.Assumption known = edition.assumptions().get(id);
            if (known == null) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        place,
                        id,
                        "assumption of this edition",
                        Similar.advice(id, edition.assumptions().keySet()));
            } else {
                Quantities.readSpan(text, known.dimension(), place, diagnostics)
                        .ifPresent(s -> assumptions.put(id, new Value.Number(s)));
            }
        });
        if (!isDate(wishes.asOf())) {
            diagnostics.add(
                    Message.OUT_OF_RANGE, new Place("-", 0, 0, "/asOf"), wishes.asOf(), "dates such as 2026-01-31");
        }
    }

    /** The date as a value; unknown when it is none, which has been reported. */
    private Value asOf() {
        return isDate(wishes.asOf())
                ? Value.number(LocalDate.parse(wishes.asOf()).toEpochDay())
                : Value.UNKNOWN;
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException e) {
            return false;
        }
    }
}

package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.ExactText;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.FieldType;

/** Looks for faults between the rules of an edition. */
public final class Examiner {

    /** Tasks tried for one question unless somebody asks for more. */
    public static final int USUAL_BUDGET = 2_000;

    /** Property of conclusions that names what they exclude. */
    private static final String EXCLUDES = "excludes";

    /** Lines are composed anew for each task tried, so that rules over lines get this share of the tries. */
    private static final int SHARE_OF_LINES = 5;

    /** What no variant of a task has shown mostly can't be shown at all, so that it gets this share of the tries. */
    private static final int SHARE_OF_THE_REST = 4;

    private final Edition edition;
    private final String asOf;
    private final int budget;
    private final Space space;
    private final Choices choices;

    /**
     * An examiner.
     *
     * @param asOf date for which law is read, ISO 8601
     * @param budget most tasks tried for one question
     */
    public Examiner(Edition edition, String asOf, int budget) {
        this.edition = edition;
        this.asOf = asOf;
        this.budget = budget;
        this.space = new Space(edition);
        this.choices = new Choices(edition);
    }

    /**
     * Looks at all rules.
     *
     * @param known findings that the edition's authors have accepted
     */
    public Examination examine(List<KnownFinding> known) {
        return examine(known, done -> {});
    }

    /** The same, telling how many rules have been looked at. */
    public Examination examine(List<KnownFinding> known, IntConsumer progress) {
        Deadness deadness = new Deadness(edition, space);
        Map<String, String> dead = new TreeMap<>();
        edition.rules().forEach(r -> deadness.of(r).ifPresent(why -> dead.put(r.id(), why)));
        Map<String, List<Example>> examples = new ConcurrentSkipListMap<>();
        AtomicInteger looked = new AtomicInteger();
        edition.rules().parallelStream().forEach(rule -> {
            examples.put(rule.id(), dead.containsKey(rule.id()) ? List.of() : examples(rule));
            progress.accept(looked.incrementAndGet());
        });
        List<Finding> findings = new ArrayList<>();
        List<Rule> alive = new ArrayList<>();
        for (Rule rule : edition.rules()) {
            if (!examples.get(rule.id()).isEmpty()) {
                alive.add(rule);
            } else if (dead.containsKey(rule.id())) {
                findings.add(
                        unfired(Finding.Kind.DEAD, rule, rule.id() + " can never fire: " + dead.get(rule.id()) + "."));
            } else {
                findings.add(unfired(
                        Finding.Kind.NOT_DECIDED,
                        rule,
                        "Among " + budget + " tasks none was found on which " + rule.id()
                                + " fires, and nothing proves that there is none."));
            }
        }
        findings.addAll(between(alive));
        List<Finding> said = findings.stream()
                .map(f -> known.stream()
                        .filter(k -> k.fits(f))
                        .findFirst()
                        .map(k -> f.accepted(k.why()))
                        .orElse(f))
                .sorted(Comparator.comparing((Finding f) -> f.accepted().isPresent())
                        .thenComparing(Finding::kind)
                        .thenComparing(f -> f.rules().toString()))
                .toList();
        return new Examination(said, examples, budget);
    }

    /**
     * Examples of one rule; none when no task was found on which it fires. Rules on dated law are tried on other dates too,
     * and shown on each date on which they take a task otherwise.
     */
    public List<Example> examples(Rule rule) {
        List<Example> out = new ArrayList<>();
        for (String date : dates(rule)) {
            List<Example> found = examples(rule, date);
            // On a date on which nothing new is to be seen, the first task says so.
            if (out.isEmpty()) {
                out.addAll(found);
            } else {
                otherwise(rule, out.get(0), date).ifPresent(out::add);
            }
        }
        return out;
    }

    private List<Example> examples(Rule rule, String date) {
        int tries = rule.isLineRule() ? budget / SHARE_OF_LINES : budget;
        return new ExampleSearch(
                        edition, space, choices, search(date, tries), search(date, tries / SHARE_OF_THE_REST), date)
                .of(rule);
    }

    /** The task of an example on another date, if the rule is silent then. */
    private Optional<Example> otherwise(Rule rule, Example first, String date) {
        return Probe.of(edition, space, List.of(rule), date)
                .see(first.task())
                .filter(seen -> seen.silent(rule.id()))
                .map(seen ->
                        new Example(rule.id(), false, first.task(), date, -1, Optional.empty(), "on another date"));
    }

    /** The date asked for and, for a rule that asks for a date, the days on both sides of it. */
    private List<String> dates(Rule rule) {
        List<String> out = new ArrayList<>(List.of(asOf));
        rule.patterns()
                .forEach(p -> p.condition()
                        .tests()
                        .filter(t -> t.field().type().equals(FieldType.number(Dimension.DATE)))
                        .forEach(t -> {
                            if (t.operand() instanceof Condition.Operand.Number n) {
                                out.add(ExactText.of(n.si(), Dimension.DATE));
                                out.add(ExactText.of(n.si() - 1, Dimension.DATE));
                                out.add(ExactText.of(n.si() + 1, Dimension.DATE));
                            }
                        }));
        return out;
    }

    /** Findings about one rule, by itself and beside every other: what an author asks after each change. */
    public List<Finding> about(Rule rule) {
        Optional<String> why = new Deadness(edition, space).of(rule);
        if (why.isPresent()) {
            return List.of(unfired(Finding.Kind.DEAD, rule, rule.id() + " can never fire: " + why.get() + "."));
        }
        List<Finding> out = new ArrayList<>();
        for (Rule other : edition.rules()) {
            if (!other.id().equals(rule.id())) {
                out.addAll(between(List.of(rule, other)));
            }
        }
        return out;
    }

    /** Findings about pairs among rules that can fire. */
    private List<Finding> between(List<Rule> alive) {
        Implication implication = new Implication(edition, space);
        List<Finding> out = new ArrayList<>(new Pairs(edition, implication, this::searches, EXCLUDES).findings(alive));
        out.addAll(new Conflicts(edition, implication, this::searches).findings(alive));
        return out;
    }

    private List<WitnessSearch> searches(Rule a, Rule b) {
        return Stream.concat(dates(a).stream(), dates(b).stream())
                .distinct()
                .map(date -> search(date, budget))
                .toList();
    }

    private WitnessSearch search(String date, int tries) {
        return new WitnessSearch(edition, space, choices, date, tries);
    }

    private Finding unfired(Finding.Kind kind, Rule rule, String words) {
        return new Finding(kind, List.of(rule.id()), rule.place(), words, Optional.empty(), asOf, Optional.empty());
    }
}

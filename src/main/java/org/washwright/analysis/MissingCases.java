package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.cases.Case;
import org.washwright.cases.Flips;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * Finds what the cases at hand do not show: rules that fire in none of them, and rules that no single change holds back. Where
 * it can, it changes one thing in a case at hand, so that one new case often shows several rules.
 */
public final class MissingCases {

    /** Cases at hand that are varied for one rule. */
    private static final int MOST_BASES = 8;

    private final Edition edition;
    private final String asOf;
    private final Assessor assessor;
    private final Space space;
    private final Choices choices;
    private final Examiner examiner;
    private final Map<String, Case> cases = new LinkedHashMap<>();
    private final Map<String, Flips.Ran> ran = new LinkedHashMap<>();

    /**
     * A search.
     *
     * @param asOf date for which law is read by cases that name none, ISO 8601
     */
    public MissingCases(Edition edition, List<Case> cases, String asOf) {
        this.edition = edition;
        this.asOf = asOf;
        this.assessor = Assessor.of(edition, SweepInference.factory());
        this.space = new Space(edition);
        this.choices = new Choices(edition);
        this.examiner = new Examiner(edition, asOf, Examiner.USUAL_BUDGET);
        cases.forEach(c -> this.cases.put(c.id(), c));
    }

    /**
     * What the search found.
     *
     * @param changes one change each to a case at hand
     * @param examples for each rule that needs tasks of its own, such tasks
     * @param notFound rules for which no task was found
     */
    public record Found(List<Change> changes, Map<String, List<Example>> examples, List<String> notFound) {}

    /**
     * A case at hand with one thing changed.
     *
     * @param of id of the case
     * @param pointer what is set, by JSON pointer
     * @param task the changed task
     * @param holdsBack rules that fire in the case and are silent here
     */
    public record Change(String of, String pointer, CleaningTask task, List<String> holdsBack) {}

    /**
     * Looks for what is missing.
     *
     * @param rules the rules of the edition to look at
     */
    public Found find(List<Rule> rules) {
        cases.values().forEach(c -> run(c).ifPresent(r -> ran.put(c.id(), r)));
        Set<String> shown = new LinkedHashSet<>(
                Flips.of(List.copyOf(ran.values())).heldBack().keySet());
        List<Change> changes = new ArrayList<>();
        Map<String, List<Example>> examples = new TreeMap<>();
        List<String> notFound = new ArrayList<>();
        for (Rule rule : rules) {
            if (shown.contains(rule.id()) || isAlways(rule)) {
                continue;
            }
            Optional<Change> change = change(rule, shown);
            if (change.isPresent()) {
                changes.add(change.get());
                shown.addAll(change.get().holdsBack());
                continue;
            }
            List<Example> own = own(rule);
            if (own.isEmpty()) {
                notFound.add(rule.id());
            } else {
                examples.put(rule.id(), own);
                shown.add(rule.id());
            }
        }
        return new Found(changes, examples, notFound);
    }

    /** True for a rule that reads nothing but processes and fires in every case: no task holds it back. */
    private boolean isAlways(Rule rule) {
        return !ran.isEmpty()
                && rule.patterns().stream().allMatch(p -> p.type().name().equals(FactTypes.PROCESS))
                && ran.values().stream().allMatch(r -> r.fired().contains(rule.id()));
    }

    private Optional<Flips.Ran> run(Case c) {
        return outcome(c.task(), date(c)).map(outcome -> Flips.Ran.of(c.id(), c.task(), date(c), outcome));
    }

    private Optional<Outcome> outcome(CleaningTask task, String date) {
        try {
            return Optional.of(assessor.outcome(task, Wishes.on(date)));
        } catch (RefusedTask e) {
            return Optional.empty();
        }
    }

    private String date(Case c) {
        return c.asOf().orElse(asOf);
    }

    /** One change to a case in which the rule fires, after which it is silent in the whole edition too. */
    private Optional<Change> change(Rule rule, Set<String> shown) {
        List<Case> bases = cases.values().stream()
                .filter(c -> ran.containsKey(c.id()) && ran.get(c.id()).fired().contains(rule.id()))
                .limit(MOST_BASES)
                .toList();
        for (Case base : bases) {
            Probe probe = Probe.of(edition, space, List.of(rule), date(base));
            Variants variants = new Variants(edition, choices, rule, probe);
            for (Edit edit : edits(base.task(), rule)) {
                boolean silent = probe.see(edit.changed())
                        .filter(seen -> seen.silent(rule.id()))
                        .isPresent();
                Optional<Change> change =
                        silent ? confirmed(base, edit.near(base, variants, probe), shown) : Optional.empty();
                if (change.filter(c -> c.holdsBack().contains(rule.id())).isPresent()) {
                    return change;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Change> confirmed(Case base, Edit edit, Set<String> shown) {
        return outcome(edit.changed(), date(base)).map(outcome -> {
            Flips.Ran now = Flips.Ran.of(base.id(), edit.changed(), date(base), outcome);
            List<String> held = ran.get(base.id()).fired().stream()
                    .filter(id -> now.silent(id) && !shown.contains(id))
                    .toList();
            return new Change(base.id(), edit.pointer(), edit.changed(), held);
        });
    }

    /** A task that differs in one thing. */
    private record Edit(String pointer, CleaningTask changed, Optional<TaskEdit> attribute) {

        /** The same edit as close to what the rule still asks for as numbers allow. */
        Edit near(Case base, Variants variants, Probe probe) {
            return attribute
                    .filter(a -> a.attribute().type() instanceof FieldType.NumberType)
                    .flatMap(a -> probe.see(changed)
                            .map(seen -> variants.tightened(new Variants.Variant(a, base.task(), changed, seen)))
                            .map(v -> new Edit(
                                    pointer,
                                    a.set(base.task(), a.in(v.changed()).orElseThrow()),
                                    attribute)))
                    .orElse(this);
        }
    }

    /** Edits of what the rule reads come first, then edits of the rest, then entries taken away. */
    private List<Edit> edits(CleaningTask task, Rule rule) {
        List<Edit> out = new ArrayList<>();
        TaskEdit.given(task, edition).stream()
                .sorted(Comparator.comparing((TaskEdit e) -> !reads(rule, e)))
                .forEach(edit -> choices.of(edit).stream()
                        .filter(given -> !given.value()
                                .equals(edit.in(task).orElseThrow().value()))
                        .sorted(Comparator.comparing((Given g) -> g.value() instanceof Value.NotApplicable))
                        .forEach(given -> out.add(new Edit(edit.pointer(), edit.set(task, given), Optional.of(edit)))));
        for (Group group : Group.values()) {
            List<Entry> entries = task.entries(group).entries();
            for (int i = 0; group.isList() && i < entries.size(); i++) {
                List<Entry> rest = new ArrayList<>(entries);
                rest.remove(i);
                CleaningTask fewer = task.with(
                        group,
                        new CleaningTask.Entries(rest, task.entries(group).open()));
                out.add(new Edit("/" + group.key(), fewer, Optional.empty()));
            }
        }
        return out;
    }

    private static boolean reads(Rule rule, TaskEdit edit) {
        return rule.patterns().stream()
                .filter(p -> edit.group()
                        .map(g -> g.factType().equals(p.type().name()))
                        .orElse(true))
                .flatMap(p -> p.condition().tests())
                .anyMatch(t -> t.field().attribute().equals(edit.attribute().name()));
    }

    /** A task of the rule's own on which it fires and one that differs in one thing on which it is silent. */
    private List<Example> own(Rule rule) {
        List<Example> all = examiner.examples(rule);
        for (Example fires : all) {
            for (Example silent : all) {
                boolean pair = fires.fires()
                        && !silent.fires()
                        && Flips.differInOne(fires.task(), fires.asOf(), silent.task(), silent.asOf());
                if (pair) {
                    return List.of(fires, silent);
                }
            }
        }
        boolean firedBefore = ran.values().stream().anyMatch(r -> r.fired().contains(rule.id()));
        return firedBefore
                ? List.of()
                : all.stream().filter(Example::fires).limit(1).toList();
    }
}

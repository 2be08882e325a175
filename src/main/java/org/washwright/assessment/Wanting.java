package org.washwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.engine.Readers;
import org.washwright.engine.Unmet;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;
import org.washwright.task.Group;

/** Says of everything that is not known what hangs on it, or why nothing does. */
final class Wanting {

    private static final int MOST_CLAUSES = 2;

    private final Edition edition;
    private final Readers readers;
    private final FactBase facts;
    private final Set<String> fired;
    private final Map<String, Hanging> hanging = new TreeMap<>();

    Wanting(Edition edition, Readers readers, FactBase facts, List<Firing> firings, List<ProcessLine> lines) {
        this.edition = edition;
        this.readers = readers;
        this.facts = facts;
        this.fired =
                firings.stream().filter(Firing::certain).map(f -> f.rule().id()).collect(Collectors.toSet());
        Set<String> standing = lines.stream()
                .filter(l -> l.status() != ProcessLine.Status.RULED_OUT)
                .map(l -> l.process().id())
                .collect(Collectors.toSet());
        firings.stream()
                .filter(f -> !f.certain())
                .forEach(f -> f.held()
                        .forEach(ref -> hanging.computeIfAbsent(ref, k -> new Hanging(edition.catalogue(), standing))
                                .add(f)));
    }

    Wanted of(List<Answer.Question> questions) {
        Map<String, Wanted.Note> notes = new TreeMap<>();
        hanging.forEach((ref, h) -> h.note().ifPresent(note -> notes.put(ref, note)));
        // What a rule asks for outright is wanted even where nothing else hangs on it.
        questions.forEach(q -> notes.merge(
                q.attribute(),
                new Wanted.Note(Wanted.Kind.DECIDES, q.consequence()),
                (own, asked) -> own.kind() == Wanted.Kind.SETTLED ? asked : own));
        for (Fact fact : facts.all()) {
            if (fact.sure()) {
                fact.type().fields().values().stream()
                        .filter(f -> f.property().isEmpty() && isGiven(fact, f.name()))
                        .filter(f -> !fact.value(f).isDefinite() && !notes.containsKey(fact.ref(f)))
                        .forEach(f -> notes.put(fact.ref(f), idle(fact, f.name())));
            }
        }
        return new Wanted(
                notes,
                questions.stream()
                        .map(q -> new Wanted.First(
                                q.attribute(),
                                q.question(),
                                notes.get(q.attribute()).text()))
                        .toList());
    }

    private static boolean isGiven(Fact fact, String field) {
        return fact.type().name().startsWith(FactTypes.ATTRIBUTE + "/")
                || Group.byFactType(fact.type().name())
                        .flatMap(g -> g.attribute(field))
                        .filter(a -> !a.computed())
                        .isPresent();
    }

    /** Why nothing waits for it: nobody reads it, or what its readers ask besides does not hold. */
    private Wanted.Note idle(Fact fact, String field) {
        List<Rule> read = readers.of(fact.type().name(), field);
        if (read.isEmpty()) {
            return new Wanted.Note(Wanted.Kind.UNREAD, "No rule of this rulebook reads it.");
        }
        Set<String> clauses = new LinkedHashSet<>();
        for (Rule rule : read) {
            List<Unmet> unmet = Unmet.of(rule, facts);
            if (!unmet.isEmpty()) {
                clauses.add(clause(rule, unmet.get(0)));
            } else if (!fired.contains(rule.id())) {
                otherwise(rule).ifPresent(clauses::add);
            }
        }
        if (clauses.isEmpty()) {
            return new Wanted.Note(Wanted.Kind.SETTLED, "Not needed: the rules that read it hold already.");
        }
        List<String> all = new ArrayList<>(clauses);
        int more = all.size() - MOST_CLAUSES;
        String shown = String.join(", or ", all.stream().limit(MOST_CLAUSES).toList());
        return new Wanted.Note(
                Wanted.Kind.SETTLED,
                "Not needed unless " + shown
                        + (more <= 0 ? "" : ", or " + (more == 1 ? "one other case" : more + " other cases")) + ".");
    }

    private String clause(Rule rule, Unmet unmet) {
        return RuleSentence.clause(edition, rule, unmet.pattern(), unmet.tests());
    }

    /** What a rule asks that fails only by how facts meet, or of the stages of a line. */
    private Optional<String> otherwise(Rule rule) {
        return rule.patterns().isEmpty()
                ? Optional.empty()
                : Optional.of(RuleSentence.clause(edition, rule, rule.patterns().size() - 1, List.of()));
    }
}

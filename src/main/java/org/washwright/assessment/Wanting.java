package org.washwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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
                Wanted.Note.of(Wanted.Kind.DECIDES, q.consequence()),
                (own, asked) -> own.kind() == Wanted.Kind.SETTLED ? asked : own));
        for (Fact fact : facts.all()) {
            if (fact.sure()) {
                fact.type().fields().values().stream()
                        .filter(f -> f.property().isEmpty() && isGiven(fact, f.name()))
                        .filter(f -> !fact.value(f).isDefinite() && !notes.containsKey(fact.ref(f)))
                        .forEach(f -> notes.put(
                                fact.ref(f), alike(fact, fact.ref(f), notes).orElseGet(() -> idle(fact, f.name()))));
            }
        }
        return new Wanted(notes, first(questions, notes));
    }

    /** What several attributes of one entry decide alike (hardness on three scales) is asked once. */
    private static List<Wanted.First> first(List<Answer.Question> questions, Map<String, Wanted.Note> notes) {
        Set<String> said = new TreeSet<>();
        List<Wanted.First> first = new ArrayList<>();
        List<Wanted.First> besides = new ArrayList<>();
        for (Answer.Question q : questions) {
            String ref = q.attribute();
            String why = notes.get(ref).text();
            if (said.add(ref.substring(0, Math.max(0, ref.lastIndexOf('/'))) + " " + q.firings() + why)) {
                // Whether there are more of a kind is asked when those that are there are known.
                boolean later = questions.stream().anyMatch(o -> isWhatItIs(o.attribute(), ref));
                (later ? besides : first).add(new Wanted.First(ref, q.question(), why));
            }
        }
        for (Wanted.First b : besides) {
            int last = 0;
            for (int i = 0; i < first.size(); i++) {
                last = isWhatItIs(first.get(i).ref(), b.ref()) ? i + 1 : last;
            }
            first.add(last, b);
        }
        return first;
    }

    /** True for the reference that says what an entry of this list is. */
    private static boolean isWhatItIs(String ref, String list) {
        return Group.byKey(list)
                .filter(g ->
                        ref.matches(list + "/[0-9]+/" + g.attributes().get(0).name()))
                .isPresent();
    }

    /** The note of what is half known and would be known better by this one too: a hardness on another scale. */
    private static Optional<Wanted.Note> alike(Fact fact, String ref, Map<String, Wanted.Note> notes) {
        return fact.type().fields().values().stream()
                .map(fact::origin)
                .filter(origin -> origin.further().contains(ref))
                .flatMap(origin -> origin.inputs().stream())
                .map(notes::get)
                .filter(n -> n != null && (n.kind() == Wanted.Kind.DECIDES || n.kind() == Wanted.Kind.MOVES))
                .findFirst();
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
            return Wanted.Note.of(Wanted.Kind.UNREAD, "No rule of this rulebook reads it.");
        }
        Set<String> clauses = new LinkedHashSet<>();
        for (Rule rule : read) {
            List<Unmet> unmet = Unmet.of(rule, facts);
            if (!unmet.isEmpty()) {
                clauses.add(RuleSentence.clause(
                        edition, rule, unmet.get(0).pattern(), unmet.get(0).tests()));
            } else if (!fired.contains(rule.id())) {
                otherwise(rule, fact.type().name()).ifPresent(clauses::add);
            }
        }
        if (clauses.isEmpty()) {
            return Wanted.Note.of(Wanted.Kind.SETTLED, "Not needed: no rule waits for it as the task stands.");
        }
        List<String> all = new ArrayList<>(clauses);
        int more = all.size() - MOST_CLAUSES;
        String shown = String.join(", or ", all.stream().limit(MOST_CLAUSES).toList());
        return Wanted.Note.of(
                Wanted.Kind.SETTLED,
                "Not needed unless " + shown
                        + (more <= 0 ? "" : ", or in " + (more == 1 ? "one other case" : more + " other cases"))
                        + ".");
    }

    /** What a rule asks besides that fails only by how facts meet, or of the stages of a line. */
    private Optional<String> otherwise(Rule rule, String own) {
        for (int i = rule.patterns().size() - 1; i >= 0; i--) {
            String type = rule.patterns().get(i).type().name();
            if (!type.equals(own) && !type.equals(FactTypes.PROCESS)) {
                return Optional.of(RuleSentence.clause(edition, rule, i, List.of()));
            }
        }
        return Optional.empty();
    }
}

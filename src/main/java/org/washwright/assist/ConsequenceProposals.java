package org.washwright.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** Proposes verbs and their arguments. */
final class ConsequenceProposals {

    private final Edition words;
    private final TermProposals terms;

    ConsequenceProposals(Edition words) {
        this.words = words;
        this.terms = new TermProposals(words);
    }

    List<Proposal> verbs(Situation.ConsequenceStart at) {
        boolean line = at.bounds().stream().anyMatch(b -> b.type().name().equals(FactTypes.STAGE));
        List<Proposal> out = new ArrayList<>();
        if (at.any()) {
            out.add(Proposal.of("end", "end\n", "word", "", "The rule ends here."));
        }
        Arrays.stream(Verb.values())
                // What a composed line shows is no ground for conclusions.
                .filter(v -> !(line && v == Verb.CONCLUDE))
                .forEach(v -> out.add(Proposal.of(v.word(), v.word() + "(", "verb", v.form(), v.meaning())));
        return out;
    }

    List<Proposal> arguments(Situation.ArgumentPlace at, Range range) {
        if (at.index() >= at.verb().arguments().size()) {
            return List.of();
        }
        Argument argument = at.verb().arguments().get(at.index());
        if (!at.nested().isEmpty()) {
            return argument == Argument.BOUND ? bound(at, range) : stageOfLine(at, range);
        }
        List<Proposal> out = new ArrayList<>(argument(argument, at, range));
        if (at.verb().isOptional(at.index())) {
            out.addAll(reason(range));
        }
        return out;
    }

    private List<Proposal> argument(Argument argument, Situation.ArgumentPlace at, Range range) {
        return switch (argument) {
            case TARGET -> withNamed(terms.targets(range), FactTypes.PROCESS, at, range);
            case ROLE ->
                Arrays.stream(Effect.Role.values())
                        .map(r -> Proposal.of(r.word(), range.quote(r.word()), "role", r.phrase(), ""))
                        .toList();
            case CRITERION -> criteria(range);
            case POINTS -> range.quoted() ? List.of() : points();
            case STAGE -> terms.stages(range);
            case STAGE_OF_LINE -> stageOfLine(at, range);
            case PLACE ->
                List.of(
                        call("after", "somewhere behind a stage"),
                        call("before", "somewhere before a stage"),
                        call("between", "between two stages"));
            case PARAMETER -> terms.parameters(range);
            case BOUND -> List.of(call("max", "at most"), call("min", "at least"));
            case HAZARD -> terms.ofKind("hazard", range);
            case CONCLUSION ->
                terms.ofKind("conclusion", range).stream()
                        .filter(p -> !at.concluded().contains(p.label()))
                        .toList();
            case SUBJECT -> range.quoted() ? List.of() : subjects(at.bounds());
            case ATTRIBUTE -> attributes(range);
            case METHOD -> terms.ofKind("test-method", range);
            case REASON -> reason(range);
        };
    }

    private static List<Proposal> withNamed(List<Proposal> some, String type, Situation.ArgumentPlace at, Range range) {
        List<Proposal> out = new ArrayList<>(range.quoted() ? List.of() : Named.facts(type, at.bounds()));
        out.addAll(some);
        return out;
    }

    private static Proposal call(String word, String name) {
        return Proposal.of(word, word + "(", "word", name, "");
    }

    private static List<Proposal> points() {
        return List.of(
                Proposal.of("1", "1", "points", "a little", ""),
                Proposal.of("2", "2", "points", "clearly", ""),
                Proposal.of("3", "3", "points", "strongly", ""));
    }

    private List<Proposal> criteria(Range range) {
        return words.grading().areas().stream()
                .flatMap(a -> a.criteria().stream()
                        .map(c -> Proposal.of(c.id(), range.quote(c.id()), "criterion", c.name(), "Area: " + a.name())))
                .toList();
    }

    private List<Proposal> stageOfLine(Situation.ArgumentPlace at, Range range) {
        List<Proposal> out = new ArrayList<>();
        out.add(Proposal.of(
                Effect.StageRef.MAIN,
                range.quote(Effect.StageRef.MAIN),
                "stage",
                "main cleaning",
                "The main stage of the line."));
        out.addAll(terms.stages(range));
        return withNamed(out, FactTypes.STAGE, at, range);
    }

    private List<Proposal> bound(Situation.ArgumentPlace at, Range range) {
        var parameter = words.catalogue().parameters().get(at.texts().get(at.index() - 1));
        if (parameter == null) {
            return List.of();
        }
        Dimension dimension = parameter.dimension();
        // A bound is a text in quotes or a whole number, so a plain number takes quotes here too.
        Range text = range.quoted() ? range : new Range(range.from(), range.to(), false, false, range.typed());
        List<Proposal> out = new ArrayList<>(QuantityProposals.of(dimension, text).stream()
                .map(p -> p.inserting(text.quote(p.label())))
                .toList());
        if (!range.quoted()) {
            out.addAll(Named.of(FieldType.number(dimension), at.bounds()));
        }
        return out;
    }

    private static List<Proposal> subjects(List<Bound> bounds) {
        return bounds.stream()
                .filter(b -> b.field().isEmpty()
                        && !b.name().isEmpty()
                        && !b.type().name().equals(FactTypes.STAGE))
                .map(b -> Proposal.of(b.name(), b.name(), "variable", b.type().name(), "What it is concluded about."))
                .toList();
    }

    private List<Proposal> attributes(Range range) {
        List<Proposal> out = new ArrayList<>();
        for (Group group : Group.values()) {
            if (group.isList()) {
                out.add(Proposal.of(group.factType(), range.quote(group.factType()), "list", group.heading(), ""));
            }
            group.attributes().forEach(a -> {
                String path = group.factType() + "." + a.name();
                out.add(Proposal.of(path, range.quote(path), "attribute", a.label(), a.question()));
            });
        }
        words.catalogue().attributes().forEach((id, a) -> {
            String path = FactTypes.ATTRIBUTE + "." + id;
            out.add(Proposal.of(path, range.quote(path), "attribute", a.label(), a.question()));
        });
        return out;
    }

    private static List<Proposal> reason(Range range) {
        return range.quoted()
                ? List.of()
                : List.of(Proposal.of(
                                "reason",
                                "\"\"",
                                "reason",
                                "one sentence",
                                "Why this is so; {$m.hardness} is replaced by the value.")
                        .caretBack(1));
    }
}

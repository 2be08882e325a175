package org.washwright.explain.whynot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.washwright.catalogue.Catalogue;
import org.washwright.engine.Fact;
import org.washwright.engine.Origin;
import org.washwright.engine.Truth;
import org.washwright.engine.Words;
import org.washwright.rule.Condition;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;
import org.washwright.rule.Sign;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Puts the conditions of a rule beside the facts chosen for it, in words. */
final class ConditionWords {

    private static final int MOST_NAMED = 3;

    private final Edition edition;
    private final Rule rule;
    private final List<Fact> all;
    private final Words words;

    ConditionWords(Edition edition, Rule rule, List<Fact> all) {
        this.edition = edition;
        this.rule = rule;
        this.all = all;
        this.words = new Words(edition.catalogue());
    }

    Outlook.Near near(Nearest.Tuple tuple) {
        List<Outlook.Condition> conditions = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern pattern = rule.patterns().get(i);
            Fact fact = tuple.facts().get(i);
            List<Fact> earlier = tuple.facts().subList(0, i);
            if (pattern.sign() != Sign.POSITIVE) {
                conditions.add(signed(i, pattern, earlier));
            } else if (fact == null) {
                conditions.add(new Outlook.Condition(
                        clause(i, List.of()), none(pattern), State.FAILED, group(pattern), isOfProcess(pattern)));
            } else {
                names.add(name(fact));
                positive(i, pattern, fact, earlier, conditions);
            }
        }
        conditions.sort(Comparator.comparing(c -> rank(c.state())));
        return new Outlook.Near(names, conditions);
    }

    private static int rank(State state) {
        return switch (state) {
            case FAILED -> 0;
            case UNDECIDED -> 1;
            case FIRED -> 2;
        };
    }

    private void positive(int i, Pattern pattern, Fact fact, List<Fact> earlier, List<Outlook.Condition> out) {
        boolean concluded = pattern.type().name().equals(FactTypes.CONCLUSION);
        if (concluded && Nearest.meets(pattern, fact, earlier) == Truth.FALSE) {
            // Another conclusion is no nearer to this one.
            out.add(new Outlook.Condition(clause(i, List.of()), none(pattern), State.FAILED, "", false));
            return;
        }
        if (!fact.sure()) {
            out.add(new Outlook.Condition(
                    clause(i, List.of()), perhaps(fact), State.UNDECIDED, fact.id(), isOfProcess(pattern)));
        }
        for (Distance.Compared c : Distance.compared(pattern, fact, earlier)) {
            boolean joins = c.test().operand() instanceof Condition.Operand.FactOf;
            // Who meets whom is in the facts chosen; only where it does not fit is it worth a word.
            if (!(joins || isAnyProcess(c.test())) || c.truth() == Truth.FALSE) {
                out.add(new Outlook.Condition(
                        clause(i, List.of(c.test())),
                        found(fact, c.test(), earlier),
                        state(c.truth()),
                        fact.ref(c.test().field()),
                        isOfProcess(pattern)));
            }
        }
    }

    /** What holds of every process. */
    private static boolean isAnyProcess(Condition.Test test) {
        return test.field().name().equals("node")
                && test.operand() instanceof Condition.Operand.Terms terms
                && terms.ids().contains(Catalogue.ROOT);
    }

    private static State state(Truth truth) {
        return switch (truth) {
            case TRUE -> State.FIRED;
            case UNDECIDED -> State.UNDECIDED;
            case FALSE -> State.FAILED;
        };
    }

    private Outlook.Condition signed(int i, Pattern pattern, List<Fact> earlier) {
        List<Fact> own = all.stream()
                .filter(f -> f.type().name().equals(pattern.type().name()))
                .toList();
        List<Fact> surely = meeting(pattern, own, earlier, Truth.TRUE);
        List<Fact> perhaps = meeting(pattern, own, earlier, Truth.UNDECIDED);
        Truth exists = !surely.isEmpty() ? Truth.TRUE : !perhaps.isEmpty() ? Truth.UNDECIDED : Truth.FALSE;
        Truth truth = pattern.sign() == Sign.NOT ? exists.not() : exists;
        String found = switch (exists) {
            case TRUE -> "there is " + names(surely);
            case UNDECIDED -> "perhaps there is " + names(perhaps);
            case FALSE -> "there is none";
        };
        List<Fact> telling = surely.isEmpty() ? perhaps : surely;
        return new Outlook.Condition(
                clause(i, List.of()),
                found,
                state(truth),
                telling.isEmpty() ? group(pattern) : telling.get(0).id(),
                isOfProcess(pattern));
    }

    private static List<Fact> meeting(Pattern pattern, List<Fact> own, List<Fact> earlier, Truth truth) {
        return own.stream()
                .filter(f -> Nearest.meets(pattern, f, earlier) == truth)
                .toList();
    }

    private String names(List<Fact> facts) {
        String more = facts.size() > MOST_NAMED ? " and " + (facts.size() - MOST_NAMED) + " more" : "";
        return facts.stream().limit(MOST_NAMED).map(this::name).collect(Collectors.joining(", ")) + more;
    }

    private String name(Fact fact) {
        return fact.type().name().equals(FactTypes.CONCLUSION) ? words.name("conclusion", fact.name()) : fact.name();
    }

    private String perhaps(Fact fact) {
        return fact.type().name().equals(FactTypes.CONCLUSION)
                ? "not decided: " + name(fact)
                : "whether there is " + fact.name() + " is not known";
    }

    private static String none(Pattern pattern) {
        String type = pattern.type().name();
        return type.equals(FactTypes.CONCLUSION)
                ? "that is not concluded"
                : Group.byFactType(type)
                        .map(g -> "the task holds no " + g.label())
                        .or(() -> Contact.byFactType(type)
                                .map(c -> "no process meets a " + c.group().label()))
                        .orElse(type.equals(FactTypes.STAGE) ? "the line holds no such stage" : "there is none");
    }

    private static String group(Pattern pattern) {
        return Group.byFactType(pattern.type().name()).map(Group::key).orElse("");
    }

    private static boolean isOfProcess(Pattern pattern) {
        return pattern.type().name().equals(FactTypes.PROCESS);
    }

    private String clause(int i, List<Condition.Test> tests) {
        return RuleSentence.clause(edition, rule, i, tests);
    }

    private String found(Fact fact, Condition.Test test, List<Fact> earlier) {
        String own = value(fact, test.field());
        if (test.operand() instanceof Condition.Operand.FieldOf f) {
            return Optional.ofNullable(earlier.get(f.pattern()))
                    .map(other -> own + ", and " + f.field().label() + " of " + other.name() + " is "
                            + value(other, f.field()))
                    .orElse(own);
        }
        return own;
    }

    private String value(Fact fact, Field field) {
        Value value = fact.value(field);
        if (value instanceof Value.AllOf || field.type() instanceof FieldType.FactType) {
            return name(fact);
        }
        int digits = fact.origin(field).kind() == Origin.Kind.GIVEN ? Words.GIVEN : Words.COMPUTED;
        return words.value(value, field.type(), digits);
    }
}

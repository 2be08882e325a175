package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.washwright.rule.Condition;
import org.washwright.rule.Condition.Operand;
import org.washwright.rule.Op;
import org.washwright.task.Value;

/**
 * A comparison is true when it holds of every value that may be, false when it holds of none, else undecided: that is the
 * definition, and what comes out is checked against it value by value. Ends of spans are whole numbers here, so that trying
 * whole numbers finds whatever may be.
 */
class LogicTest {

    private static final int TOP = 3;
    private static final List<String> TERMS = List.of("a", "b", "c");

    @ParameterizedTest
    @EnumSource(
            value = Op.class,
            names = {"EQ", "NE", "LT", "LE", "GT", "GE"})
    void numbersAreComparedAsEachOfTheirValuesWouldBe(Op op) {
        BiPredicate<Integer, Integer> holds = switch (op) {
            case EQ -> (x, y) -> x.intValue() == y.intValue();
            case NE -> (x, y) -> x.intValue() != y.intValue();
            case LT -> (x, y) -> x < y;
            case LE -> (x, y) -> x <= y;
            case GT -> (x, y) -> x > y;
            default -> (x, y) -> x >= y;
        };
        for (int a = 0; a <= TOP; a++) {
            for (int b = a; b <= TOP; b++) {
                for (int c = 0; c <= TOP; c++) {
                    for (int d = c; d <= TOP; d++) {
                        Truth expected = of(range(a, b), range(c, d), holds);
                        assertEquals(
                                expected,
                                fields(Things.number(Things.span(a, b)), op, Things.number(Things.span(c, d)), true),
                                a + ".." + b + " " + op + " " + c + ".." + d);
                        if (c == d) {
                            assertEquals(expected, literal(Things.span(a, b), op, c));
                        }
                    }
                }
            }
        }
    }

    @Test
    void oneOfSeveralTermsIsComparedAsEachOfThemWouldBe() {
        for (TreeSet<String> own : Things.sets(TERMS)) {
            for (TreeSet<String> listed : Things.sets(TERMS)) {
                BiPredicate<String, Set<String>> in = (x, set) -> set.contains(x);
                Truth isIn = of(List.copyOf(own), List.of(listed), in::test);
                Value value = Value.oneOf(own);
                assertEquals(isIn, terms(value, Op.IN, listed));
                assertEquals(isIn, terms(value, Op.EQ, listed));
                assertEquals(opposite(isIn), terms(value, Op.NOT_IN, listed));
                assertEquals(opposite(isIn), terms(value, Op.NE, listed));
                Truth equal = of(List.copyOf(own), List.copyOf(listed), String::equals);
                Fact other = Things.term(Value.oneOf(listed));
                assertEquals(equal, fields(Things.term(value), Op.EQ, other, false));
                assertEquals(opposite(equal), fields(Things.term(value), Op.NE, other, false));
            }
        }
    }

    @Test
    void allGroupsOfAProcessAtOnceAreEqualToEachOfThem() {
        for (TreeSet<String> groups : Things.sets(TERMS)) {
            Value value = new Value.AllOf(groups);
            for (TreeSet<String> listed : Things.sets(TERMS)) {
                boolean meet = listed.stream().anyMatch(groups::contains);
                assertEquals(meet ? Truth.TRUE : Truth.FALSE, terms(value, Op.IN, listed));
                assertEquals(meet ? Truth.FALSE : Truth.TRUE, terms(value, Op.NOT_IN, listed));
                // Another fact's one of several: each of them would have to be a group.
                Truth equal = of(List.copyOf(listed), List.of(groups), (x, set) -> set.contains(x));
                Fact several = Things.term(Value.oneOf(listed));
                assertEquals(equal, fields(Things.term(value), Op.EQ, several, false));
                assertEquals(equal, fields(several, Op.EQ, Things.term(value), false));
                assertEquals(opposite(equal), fields(several, Op.NE, Things.term(value), false));
                Fact both = Things.term(new Value.AllOf(listed));
                assertEquals(meet ? Truth.TRUE : Truth.FALSE, fields(Things.term(value), Op.EQ, both, false));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Op.class)
    void whatDoesNotApplyComparesFalseAndTheUnknownUndecided(Op op) {
        Fact none = Things.fact("a", true, Value.NOT_APPLICABLE, Value.NOT_APPLICABLE, Value.UNKNOWN);
        Fact unknown = Things.fact("b", true, Value.UNKNOWN, Value.UNKNOWN, Value.UNKNOWN);
        Fact known = Things.fact("c", true, Value.number(1), Value.term("a"), Value.UNKNOWN);
        assertEquals(Truth.FALSE, terms(Value.NOT_APPLICABLE, op, new TreeSet<>(Set.of("a"))));
        assertEquals(Truth.UNDECIDED, terms(Value.UNKNOWN, op, new TreeSet<>(Set.of("a"))));
        assertEquals(Truth.FALSE, literal(Value.NOT_APPLICABLE, op, 1));
        assertEquals(Truth.UNDECIDED, literal(Value.UNKNOWN, op, 1));
        for (boolean number : List.of(true, false)) {
            assertEquals(Truth.FALSE, fields(none, op, known, number));
            assertEquals(Truth.FALSE, fields(known, op, none, number));
            assertEquals(Truth.FALSE, fields(none, op, unknown, number));
            assertEquals(Truth.FALSE, fields(unknown, op, none, number));
            assertEquals(Truth.UNDECIDED, fields(unknown, op, known, number));
            assertEquals(Truth.UNDECIDED, fields(known, op, unknown, number));
        }
    }

    @Test
    void aReferenceIsToOneFactOnly() {
        Condition.Test test = new Condition.Test(Things.OTHER, Op.EQ, new Operand.FactOf(0));
        Fact a = Things.number(Value.number(1));
        Fact b = Things.fact("b", true, Value.number(1), Value.UNKNOWN, Value.UNKNOWN);
        Fact ofA = Things.fact("c", true, Value.UNKNOWN, Value.UNKNOWN, new Value.Reference("a"));
        Fact ofNone = Things.fact("c", true, Value.UNKNOWN, Value.UNKNOWN, Value.NOT_APPLICABLE);
        assertEquals(Truth.TRUE, Logic.truth(test, ofA, List.of(a)));
        assertEquals(Truth.FALSE, Logic.truth(test, ofA, List.of(b)));
        assertEquals(Truth.FALSE, Logic.truth(test, ofNone, List.of(a)));
    }

    @Test
    void allOfSomePartsAreAsTrueAsTheLeastTrueAndAnyAsTheMostTrue() {
        // Of a number between 1 and 2: above 0 is true, above 1 undecided, above 2 false.
        Fact fact = Things.number(Things.span(1, 2));
        Condition yes = above(0);
        Condition maybe = above(1);
        Condition no = above(2);
        assertEquals(Truth.TRUE, Logic.truth(new Condition.All(List.of(yes, yes)), fact, List.of()));
        assertEquals(Truth.UNDECIDED, Logic.truth(new Condition.All(List.of(yes, maybe)), fact, List.of()));
        assertEquals(Truth.FALSE, Logic.truth(new Condition.All(List.of(no, yes, maybe)), fact, List.of()));
        assertEquals(Truth.FALSE, Logic.truth(new Condition.Any(List.of(no, no)), fact, List.of()));
        assertEquals(Truth.UNDECIDED, Logic.truth(new Condition.Any(List.of(no, maybe)), fact, List.of()));
        assertEquals(Truth.TRUE, Logic.truth(new Condition.Any(List.of(yes, no, maybe)), fact, List.of()));
        assertEquals(Truth.TRUE, Logic.truth(Condition.ALWAYS, fact, List.of()));
    }

    private static Condition above(double x) {
        return new Condition.Test(Things.NUMBER, Op.GT, new Operand.Number(x));
    }

    private static List<Integer> range(int low, int high) {
        return IntStream.rangeClosed(low, high).boxed().toList();
    }

    private static <A, B> Truth of(List<A> as, List<B> bs, BiPredicate<A, B> holds) {
        long yes = as.stream()
                .flatMap(a -> bs.stream().filter(b -> holds.test(a, b)))
                .count();
        return yes == 0 ? Truth.FALSE : yes == (long) as.size() * bs.size() ? Truth.TRUE : Truth.UNDECIDED;
    }

    private static Truth opposite(Truth truth) {
        return truth == Truth.TRUE ? Truth.FALSE : truth == Truth.FALSE ? Truth.TRUE : Truth.UNDECIDED;
    }

    private static Truth literal(Value value, Op op, double number) {
        return Logic.truth(
                new Condition.Test(Things.NUMBER, op, new Operand.Number(number)), Things.number(value), List.of());
    }

    private static Truth terms(Value value, Op op, TreeSet<String> ids) {
        return Logic.truth(new Condition.Test(Things.TERM, op, new Operand.Terms(ids)), Things.term(value), List.of());
    }

    private static Truth fields(Fact fact, Op op, Fact other, boolean number) {
        var field = number ? Things.NUMBER : Things.TERM;
        return Logic.truth(new Condition.Test(field, op, new Operand.FieldOf(0, field)), fact, List.of(other));
    }
}

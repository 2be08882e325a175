package org.washwright.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.generate.SmallEdition;
import org.washwright.quantity.Dimension;
import org.washwright.task.FieldType;

class GradingTest {

    private static final Field FIELD = new Field("medium.flash", "flash point", FieldType.number(Dimension.RATIO), 0);

    /** Points on straight lines from (10, 0) over (20, 40) to (40, 20), worked out by hand. */
    @ParameterizedTest
    @CsvSource({"5, 0", "10, 0", "12.5, 10", "15, 20", "20, 40", "25, 35", "30, 30", "40, 20", "41, 20", "1000, 20"})
    void pointsLieOnStraightLinesBetweenBreakpointsAndStayBeyondTheEnds(double value, double points) {
        Grading.Figure figure = new Grading.Figure(
                Optional.of(FIELD),
                "",
                Dimension.RATIO,
                List.of(new Grading.Breakpoint(10, 0), new Grading.Breakpoint(20, 40), new Grading.Breakpoint(40, 20)));
        assertEquals(points, Grading.points(figure, value), 1e-12);
    }

    @Test
    void theFirstPointsHoldBelowTheFirstBreakpoint() {
        Grading.Figure figure = new Grading.Figure(
                Optional.of(FIELD),
                "",
                Dimension.RATIO,
                List.of(new Grading.Breakpoint(10, 7), new Grading.Breakpoint(20, 9)));
        assertEquals(7, Grading.points(figure, -3), 0);
        assertEquals(7, Grading.points(figure, 10), 0);
        assertEquals(9, Grading.points(figure, 20), 0);
    }

    @Test
    void aCriterionIsFoundInWhateverAreaItStands() {
        Grading grading = SmallEdition.with("").grading();
        assertEquals("safe", grading.criterion("safe").orElseThrow().id());
        assertTrue(grading.criterion("dear").isEmpty());
    }

    @Test
    void aFieldBehindADotIsAPropertyOfAnAttribute() {
        assertEquals("medium", FIELD.attribute());
        assertEquals("flash", FIELD.property());
        Field plain = new Field("amount", "amount", FieldType.number(Dimension.AREAL_MASS), 0);
        assertEquals("amount", plain.attribute());
        assertEquals("", plain.property());
    }

    @Test
    void onlyFourOperatorsNeedAnOrder() {
        for (Op op : Op.values()) {
            assertEquals(List.of("<", "<=", ">", ">=").contains(op.sign()), op.isOrder(), op.sign());
        }
        assertFalse(Op.NOT_IN.isOrder());
    }
}

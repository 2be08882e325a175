package org.washwright.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer.Criterion;
import org.washwright.assessment.Answer.Point;
import org.washwright.pages.Waterfall.Step;

class WaterfallTest {

    @Test
    void certain_points_run_on_and_undecided_ones_reach_out_from_where_those_end() {
        Point strongest = new Point("for", 20, true, true, 1, "");
        Point shown = new Point("also for", 10, false, true, 2, "");
        Point open = new Point("against", -30, true, false, 3, "");
        Criterion criterion = new Criterion("c", "c", 1, 50, 40, 70, List.of(open, shown, strongest));

        List<Step> steps = Waterfall.steps(criterion);

        assertEquals(new Step(open, 40, 70), steps.get(0));
        assertEquals(new Step(shown, 50, 50), steps.get(1));
        assertEquals(new Step(strongest, 50, 70), steps.get(2));
        assertEquals("undecided", steps.get(0).standing());
        assertEquals("against", steps.get(0).way());
    }
}

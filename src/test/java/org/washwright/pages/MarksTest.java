package org.washwright.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer.Factor;

class MarksTest {

    @Test
    void a_quarter_of_the_area_reaches_half_of_the_radius() {
        // Area goes with the square of the radius: sqrt(0.25) * 37 = 18.5.
        assertEquals("M41 39L41 20.5A18.5 18.5 0 0 1 59.5 39Z", Marks.fill(new Factor("medium", "3 %", 0.25)));
    }

    @Test
    void the_four_factors_stand_clockwise_from_the_upper_right() {
        assertEquals("M41 39L41 2A37 37 0 0 1 78 39Z", Marks.quadrant("medium"));
        assertEquals("M41 41L78 41A37 37 0 0 1 41 78Z", Marks.quadrant("agitation"));
        assertEquals("M39 41L39 78A37 37 0 0 1 2 41Z", Marks.quadrant("temperature"));
        assertEquals("M39 39L2 39A37 37 0 0 1 39 2Z", Marks.quadrant("time"));
    }

    @Test
    void a_factor_without_a_scale_is_not_filled_and_says_so() {
        Factor none = new Factor("medium", "none", -1);

        assertFalse(Marks.scaled(none));
        assertEquals("", Marks.fill(none));
        assertEquals("medium: none (no scale)", Marks.inWords(List.of(none)));
    }

    @Test
    void the_disc_is_read_out_with_its_settings() {
        assertEquals(
                "temperature: 60 °C (50 % of the possible range); time: 180 s (35 % of the possible range)",
                Marks.inWords(List.of(new Factor("temperature", "60 °C", 0.5), new Factor("time", "180 s", 0.35))));
    }

    @Test
    void a_factor_that_is_none_of_the_four_is_refused_by_name() {
        var refused = assertThrows(IllegalArgumentException.class, () -> Marks.quadrant("colour"));
        assertTrue(refused.getMessage().contains("colour"));
    }

    @Test
    void a_bar_ends_within_its_track() {
        assertEquals("0", Marks.place(-3));
        assertEquals("76.4", Marks.place(76.4));
        assertEquals("100", Marks.place(140));
    }
}

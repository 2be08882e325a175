package org.washwright.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FiguresTest {

    @Test
    void numbers_have_three_significant_figures_and_thin_spaces() {
        assertEquals("1\u2009230\u2009000", Figures.three(1_234_567));
        assertEquals("1\u2009200", Figures.three(1200));
        assertEquals("14.4", Figures.three(14.4));
        assertEquals("0.0123", Figures.three(0.012_345));
        assertEquals("\u22120.5", Figures.three(-0.5));
        assertEquals("0", Figures.three(0));
        assertEquals("100", Figures.three(99.96));
    }

    @Test
    void a_number_that_is_none_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Figures.three(Double.NaN));
    }

    @Test
    void points_are_whole_and_a_range_shows_both_ends() {
        assertEquals("77\u201382", Figures.span(76.5, 81.6));
        assertEquals("77 to 82", Figures.spanInWords(76.5, 81.6));
        assertEquals("76", Figures.span(76.1, 76.4));
        assertEquals("+20", Figures.signed(20));
        assertEquals("\u221210", Figures.signed(-10));
    }
}

package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.task.Value;

/** Kleene's strong logic of three values: S. C. Kleene, Introduction to Metamathematics, 1952, paragraph 64. */
class TruthTest {

    @Test
    void truthTablesAreThoseOfKleene() {
        Truth t = Truth.TRUE;
        Truth u = Truth.UNDECIDED;
        Truth f = Truth.FALSE;
        assertEquals(List.of(t, u, f), List.of(t.and(t), t.and(u), t.and(f)));
        assertEquals(List.of(u, u, f), List.of(u.and(t), u.and(u), u.and(f)));
        assertEquals(List.of(f, f, f), List.of(f.and(t), f.and(u), f.and(f)));
        assertEquals(List.of(t, t, t), List.of(t.or(t), t.or(u), t.or(f)));
        assertEquals(List.of(t, u, u), List.of(u.or(t), u.or(u), u.or(f)));
        assertEquals(List.of(t, u, f), List.of(f.or(t), f.or(u), f.or(f)));
        assertEquals(List.of(f, u, t), List.of(t.not(), u.not(), f.not()));
        assertEquals(List.of(t, f), List.of(Truth.of(true), Truth.of(false)));
        assertEquals(List.of(t, u, f), List.of(Truth.of(true, true), Truth.of(false, true), Truth.of(false, false)));
    }

    @Test
    void aFactIsKnownByItsIdAndShowsADoubtOfItsExistence() {
        Fact sure = Things.number(Value.number(1));
        Fact same = Things.fact("a", false, Value.number(2), Value.UNKNOWN, Value.UNKNOWN);
        Fact other = Things.fact("b", true, Value.number(1), Value.UNKNOWN, Value.UNKNOWN);
        assertEquals(sure, same);
        assertEquals(sure.hashCode(), same.hashCode());
        assertNotEquals(sure.hashCode(), other.hashCode());
        assertNotEquals(sure, other);
        assertNotEquals(sure, "a");
        assertEquals(List.of("a", "a?"), List.of(sure.toString(), same.toString()));
        assertEquals("a/number", sure.ref(Things.NUMBER));
    }

    @Test
    void aFactHasAValueAndAnOriginForEachField() {
        List<Origin> two = List.of(Origin.NONE, Origin.NONE);
        List<Origin> three = List.of(Origin.NONE, Origin.NONE, Origin.NONE);
        List<Value> values = List.of(Value.UNKNOWN, Value.UNKNOWN, Value.UNKNOWN);
        assertThrows(
                IllegalArgumentException.class, () -> new Fact("a", Things.TYPE, "a", true, values.subList(0, 2), two));
        assertThrows(IllegalArgumentException.class, () -> new Fact("a", Things.TYPE, "a", true, values, two));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Fact("a", Things.TYPE, "a", true, values.subList(0, 2), three));
        assertEquals("x", new Fact("a", Things.TYPE, "x", true, values, three).name());
    }
}

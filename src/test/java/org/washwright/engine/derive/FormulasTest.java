package org.washwright.engine.derive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.washwright.engine.contact.ContactFormula;
import org.washwright.engine.contact.ContactFormulas;
import org.washwright.quantity.Span;
import org.washwright.rule.Contact;
import org.washwright.rule.ProcessFigures;
import org.washwright.task.Attribute;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * Numbers of hardness and strength are rows of ISO 18265:2013, table A.1, and ASTM E140, table 1: 20 HRC, 238 HV and 770
 * MPa; 31 HRC, 310 HV and 995 MPa; 60 HRC, 697 HV and 2180 MPa; each within the 5 % that conversion scatters.
 */
class FormulasTest {

    private static final double LOW = 0.95;
    private static final double HIGH = 1.05;

    @Test
    void eachComputedAttributeHasOneFormulaWithWordsAndASource() {
        for (Group group : Group.values()) {
            List<Derivation> formulas = Derivations.of(group);
            assertEquals(
                    new TreeSet<>(group.attributes().stream()
                            .filter(Attribute::computed)
                            .map(Attribute::name)
                            // The date of the question comes with the request.
                            .filter(name -> !name.equals("asOf"))
                            .toList()),
                    new TreeSet<>(formulas.stream().map(Derivation::attribute).toList()));
            formulas.forEach(
                    f -> assertFalse(f.formula().isBlank() || f.source().isBlank(), f.attribute()));
        }
    }

    @Test
    void eachFigureOfAProcessAndOfWhatItMeetsHasOneFormula() {
        assertEquals(
                ProcessFigures.ALL.stream().map(Attribute::name).toList(),
                Derivations.ofProcess().stream().map(Derivation::attribute).toList());
        for (Contact contact : Contact.values()) {
            assertEquals(
                    new TreeSet<>(
                            contact.attributes().stream().map(Attribute::name).toList()),
                    new TreeSet<>(ContactFormulas.of(contact).stream()
                            .map(ContactFormula::attribute)
                            .toList()));
        }
    }

    @Test
    void productsAndQuotientsOfWhatDoesNotApplyDoNotApplyAndOfTheUnknownAreUnknown() {
        Value two = Value.number(2);
        Value three = Value.number(3);
        assertEquals(Value.number(6), Derivation.product(two, three));
        assertEquals(Value.number(1.5), Derivation.quotient(three, two));
        assertEquals(new Value.Number(new Span(1, 3)), Derivation.quotient(three, new Value.Number(new Span(1, 3))));
        for (Value v : List.of(two, Value.UNKNOWN, Value.NOT_APPLICABLE)) {
            assertEquals(Value.NOT_APPLICABLE, Derivation.product(v, Value.NOT_APPLICABLE));
            assertEquals(Value.NOT_APPLICABLE, Derivation.product(Value.NOT_APPLICABLE, v));
        }
        assertEquals(Value.UNKNOWN, Derivation.product(two, Value.UNKNOWN));
        assertEquals(Value.UNKNOWN, Derivation.quotient(Value.UNKNOWN, two));
    }

    @Test
    void whatIsGivenOnTheWantedScaleIsTakenAsItIs() {
        Derivation.Computed strength = strength(Map.of("tensileStrength", Value.number(995e6)));
        assertEquals(Value.number(995e6), strength.value());
        assertEquals(List.of("here/tensileStrength"), strength.inputs());
        assertEquals(List.of("here/hardness", "here/vickersHardness"), strength.further());
        assertEquals(
                Value.number(31), rockwell(Map.of("hardness", Value.number(31))).value());
    }

    @Test
    void aConvertedValueIsASpanOfFivePerCent() {
        assertSpan(995e6 * LOW, 995e6 * HIGH, strength(Map.of("hardness", Value.number(31))));
        assertSpan(995e6 * LOW, 995e6 * HIGH, strength(Map.of("vickersHardness", Value.number(310))));
        assertSpan(31 * LOW, 31 * HIGH, rockwell(Map.of("vickersHardness", Value.number(310))));
        assertSpan(31 * LOW, 31 * HIGH, rockwell(Map.of("tensileStrength", Value.number(995e6))));
        assertSpan(770e6 * LOW, 995e6 * HIGH, strength(Map.of("hardness", new Value.Number(new Span(20, 31)))));
    }

    @Test
    void beyondTheEndsOfTheTableOneEndOfTheSpanIsOpen() {
        double up = Double.POSITIVE_INFINITY;
        assertSpan(770e6 * LOW, 770e6 * HIGH, strength(Map.of("hardness", Value.number(20))));
        assertSpan(2180e6 * LOW, 2180e6 * HIGH, strength(Map.of("hardness", Value.number(60))));
        assertSpan(0, 770e6 * HIGH, strength(Map.of("hardness", Value.number(15))));
        assertSpan(2180e6 * LOW, up, strength(Map.of("hardness", Value.number(62))));
        assertSpan(0, up, strength(Map.of("hardness", new Value.Number(new Span(10, 70)))));
    }

    @Test
    void whatSeveralScalesAgreeOnIsTheirCommonSpan() {
        Value wide = new Value.Number(new Span(1000e6, 1100e6));
        Derivation.Computed both = strength(Map.of("hardness", Value.number(31), "tensileStrength", wide));
        assertSpan(1000e6, 995e6 * HIGH, both);
        assertTrue(both.contradiction().isEmpty());
        assertEquals(List.of("here/tensileStrength", "here/hardness"), both.inputs());
        assertEquals(List.of("here/vickersHardness"), both.further());
    }

    @Test
    void scalesThatOnlyTouchAgreeAndThoseApartContradictEachOther() {
        double low = 995e6 * LOW;
        double high = 995e6 * HIGH;
        for (double touching : List.of(low, high)) {
            Derivation.Computed c =
                    strength(Map.of("hardness", Value.number(31), "tensileStrength", Value.number(touching)));
            assertEquals(Value.number(touching), c.value());
            assertTrue(c.contradiction().isEmpty());
        }
        for (double apart : List.of(Math.nextDown(low), Math.nextUp(high), 500e6, 2000e6)) {
            Derivation.Computed c =
                    strength(Map.of("hardness", Value.number(31), "tensileStrength", Value.number(apart)));
            assertEquals(Value.UNKNOWN, c.value());
            assertEquals(
                    "the strength given on different scales", c.contradiction().orElseThrow());
            assertEquals(List.of("here/tensileStrength", "here/hardness"), c.inputs());
        }
    }

    @Test
    void withNothingGivenAllScalesAreWhatIsMissing() {
        Derivation.Computed nothing = strength(Map.of());
        assertEquals(Value.UNKNOWN, nothing.value());
        assertEquals(List.of("here/tensileStrength", "here/hardness", "here/vickersHardness"), nothing.inputs());
        assertEquals(List.of(), nothing.further());
    }

    @Test
    void aMetalWithoutAnyOfTheScalesHasNoStrength() {
        Map<String, Value> none = new HashMap<>();
        List.of("tensileStrength", "hardness", "vickersHardness").forEach(a -> none.put(a, Value.NOT_APPLICABLE));
        assertEquals(Value.NOT_APPLICABLE, strength(none).value());
        none.put("tensileStrength", Value.UNKNOWN);
        assertEquals(Value.UNKNOWN, strength(none).value());
    }

    @Test
    void theLargestParticleIsTheLowerBoundOfTheSmallestForbiddenClass() {
        // ISO 16232:2018: class J starts at 600 µm, class H at 200 µm.
        assertEquals(Value.number(600e-6), largest("A(B-E17/F-G14/H-I4/J-K00)", Value.term("x")));
        assertEquals(Value.number(200e-6), largest("N(B-G5/H-K00)", Value.term("x")));
        assertEquals(Value.NOT_APPLICABLE, largest("A(B-J10)", Value.term("x")));
        assertEquals(Value.NOT_APPLICABLE, largest("", Value.NOT_APPLICABLE));
        assertEquals(Value.UNKNOWN, largest("", Value.UNKNOWN));
    }

    private static Value largest(String code, Value given) {
        Map<String, Value> values = Map.of(
                "particleCode", given, "particleLimit", Value.NOT_APPLICABLE, "productLevel", Value.NOT_APPLICABLE);
        Derivation.Computed c = new LargestParticle().compute(new Given(values, code));
        assertTrue(c.inputs().contains("here/particleCode"));
        return c.value();
    }

    private static Derivation.Computed strength(Map<String, Value> given) {
        return new MaterialStrength().compute(new Given(given, ""));
    }

    private static Derivation.Computed rockwell(Map<String, Value> given) {
        return new MaterialRockwell().compute(new Given(given, ""));
    }

    private static void assertSpan(double low, double high, Derivation.Computed computed) {
        Span span = ((Value.Number) computed.value()).span();
        // A last bit may differ: the table interpolates before the scatter is put on.
        assertEquals(low, span.low(), Math.abs(low) * 1e-12);
        assertEquals(high, span.high(), Double.isInfinite(high) ? 0 : high * 1e-12);
    }

    /** Values by attribute; what is not there is unknown. */
    private record Given(Map<String, Value> values, String text) implements Derivation.Inputs {

        @Override
        public Value own(String attribute) {
            return values.getOrDefault(attribute, Value.UNKNOWN);
        }

        @Override
        public String code(String attribute) {
            return attribute.equals("particleCode") ? text : "";
        }

        @Override
        public Value given(String attribute) {
            return own(attribute);
        }

        @Override
        public Value property(String attribute, String property) {
            return own(attribute + "." + property);
        }

        @Override
        public String codeOf(Group group, String attribute) {
            return values.containsKey("found") ? "A(H10)" : "";
        }

        @Override
        public Value highest(String parameter) {
            return own("highest " + parameter);
        }

        @Override
        public Value of(Group group, String attribute) {
            throw new AssertionError("no formula of this test reads another group");
        }

        @Override
        public Value assumption(String id) {
            throw new AssertionError("no formula of this test reads an assumption");
        }

        @Override
        public String ref(String attribute) {
            return "here/" + attribute;
        }
    }
}

package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Values as they stand in answers. */
class ValueWordsTest {

    private static final Edition EDITION = SmallEdition.with("");
    private static final Words WORDS = new Words(EDITION.catalogue());

    @Test
    void aValueIsSaidWithTheNamesOfTheCatalogueAndUsualUnits() {
        FieldType length = FieldType.number(Dimension.LENGTH);
        FieldType process = FieldType.term("process");
        assertEquals("not known", WORDS.value(Value.UNKNOWN, length, 3));
        assertEquals("does not apply", WORDS.value(Value.NOT_APPLICABLE, length, 3));
        assertEquals("12.3 mm", WORDS.value(Value.number(0.012345), length, 3));
        assertEquals("12.345 mm", WORDS.value(Value.number(0.012345), length, 6));
        assertEquals("1 to 2 mm", WORDS.value(new Value.Number(new Span(0.001, 0.002)), length, 3));
        assertEquals("water A", WORDS.value(Value.term("water-a"), process, 3));
        assertEquals("oil A or water A", WORDS.value(Value.oneOf(List.of("water-a", "oil-a")), process, 3));
        assertEquals("any, water", WORDS.value(Things.all("any", "water"), process, 3));
        assertEquals("yes", WORDS.value(Value.flag(true), FieldType.flag(), 3));
        assertEquals("soils/0", WORDS.value(new Value.Reference("soils/0"), new FieldType.FactType(), 3));
        assertEquals(
                "A(B-J10)",
                WORDS.value(Value.term("A(B-J10)"), FieldType.code(FieldType.Code.COMPONENT_CLEANLINESS), 3));
    }

    @Test
    void aStageOfALineIsAStageOrAProcess() {
        assertEquals("second", WORDS.name(FactTypes.LINE_STAGE, "second"));
        assertEquals("water A", WORDS.name(FactTypes.LINE_STAGE, "water-a"));
        assertEquals("water A", WORDS.name("process", "water-a"));
    }

    @Test
    void insideASentenceWhatIsMissingIsNamed() {
        FactBase facts = facts("soils: {open: yes, list: [{amount: unknown, state: not applicable}]}\n");
        assertEquals("unknown amount", said(facts, "soils/0", "amount"));
        assertEquals("no state", said(facts, "soils/0", "state"));
        assertEquals("unknown soil", said(facts, "soils/0", "kind"));
        assertEquals("further soil", said(facts, "soils/*", "kind"));
        assertEquals("unknown amount", said(facts, "soils/*", "amount"));
        assertEquals("unknown oily of the soil", said(facts, "soils/*", "kind.oily"));
    }

    @Test
    void upToFourOfSeveralAreListedAndMoreAreCounted() {
        FactBase facts = facts("soils: [{state: [soil-state-a, soil-state-b, soil-state-c, soil-state-d]},"
                + " {state: [soil-state-a, soil-state-b, soil-state-c, soil-state-d, soil-state-e]}]\n");
        assertEquals("soil-state a or soil-state b or soil-state c or soil-state d", said(facts, "soils/0", "state"));
        assertEquals("one of 5", said(facts, "soils/1", "state"));
    }

    @Test
    void whatWasGivenKeepsSixFiguresAndWhatWasComputedThree() {
        FactBase facts = facts("features: [{depth: 1.23456 mm, diameter: 1 mm}]\n");
        assertEquals("1.23456 mm", said(facts, "features/0", "depth"));
        assertEquals("1.23", said(facts, "features/0", "slenderness"));
    }

    private static String said(FactBase facts, String id, String field) {
        Fact fact = facts.fact(id).orElseThrow();
        return WORDS.inSentence(fact, fact.type().field(field).orElseThrow());
    }

    private static FactBase facts(String yaml) {
        return FactBuilder.build(Starter.task(EDITION, "title: t\n" + yaml), EDITION, Map.of(), new Diagnostics());
    }
}

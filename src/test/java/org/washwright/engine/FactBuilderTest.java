package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.rule.Field;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** What was given, what the catalogue of the small edition says of it, and what follows by formula. */
class FactBuilderTest {

    private static final Edition EDITION = SmallEdition.with("");

    @Test
    void anOpenListHasOneMoreFactThatIsNotSureAndAClosedOneHasNot() {
        FactBase open =
                facts("soils: {open: yes, list: [{kind: soil-a}]}\nfeatures: {open: no, list: [{depth: 1 mm}]}\n");
        assertTrue(open.fact("soils/0").orElseThrow().sure());
        Fact further = open.fact("soils/*").orElseThrow();
        assertFalse(further.sure());
        assertEquals("a further soil", further.name());
        assertEquals(Value.UNKNOWN, value(open, "soils/*", "kind"));
        assertTrue(open.fact("features/*").isEmpty());
        assertTrue(open.fact("materials/*").isPresent(), "of a list that is not mentioned nothing is known");
        assertTrue(open.fact("part").orElseThrow().sure(), "there is one part, whatever is known of it");
        assertTrue(open.fact("part/*").isEmpty());
    }

    @Test
    void factsAreCalledByTheirFirstTermElseByTheirNumber() {
        FactBase facts = facts("soils: [{kind: soil-a}, {kind: [soil-a, soil-b]}, {amount: 2 g/m2}]\n");
        assertEquals("A", name(facts, "soils/0"));
        assertEquals("A or B", name(facts, "soils/1"));
        assertEquals("soil 3", name(facts, "soils/2"));
        assertEquals("the part", name(facts, "part"));
        assertEquals("a flag", name(facts, "attributes/att-flag"));
        assertEquals("water A", name(facts, "process/water-a"));
    }

    @Test
    void theCatalogueFillsWhatStandsBehindADot() {
        FactBase facts = facts("materials: [{substrate: substrate-a}, {substrate: not applicable}, {porous: yes}]\n");
        assertEquals(Value.term("family-a"), value(facts, "materials/0", "substrate.family"));
        assertEquals(Value.flag(true), value(facts, "materials/0", "substrate.rusts"));
        assertEquals(Value.number(31), value(facts, "materials/0", "substrate.limit"));
        assertEquals(Value.NOT_APPLICABLE, value(facts, "materials/1", "substrate.family"));
        assertEquals(Value.UNKNOWN, value(facts, "materials/2", "substrate.family"));
        Origin origin = origin(facts, "materials/0", "substrate.family");
        assertEquals(Origin.Kind.CATALOGUE, origin.kind());
        assertEquals("A", origin.detail());
        assertEquals(List.of("materials/0/substrate"), origin.inputs());
    }

    @Test
    void ofOneOfSeveralTermsThePropertiesAreTakenTogether() {
        FactBase facts = facts(
                "materials: [{substrate: [substrate-a, substrate-b]}, {substrate: [substrate-a, substrate-c]}]\n");
        assertEquals(new Value.Number(new Span(20, 40)), value(facts, "materials/0", "substrate.limit"));
        assertEquals(Value.oneOf(List.of("family-a", "family-b")), value(facts, "materials/0", "substrate.family"));
        assertEquals(Value.oneOf(List.of("yes", "no")), value(facts, "materials/0", "substrate.rusts"));
        assertEquals("A or B", origin(facts, "materials/0", "substrate.limit").detail());
        // One may be 31 HRC, of the other the catalogue has no such number.
        assertEquals(Value.UNKNOWN, value(facts, "materials/1", "substrate.limit"));
    }

    @Test
    void termsThatAgreeLeaveNothingOpen() {
        FactBase facts = facts("soils: [{kind: [soil-a, soil-c]}]\n");
        assertEquals(Value.flag(true), value(facts, "soils/0", "kind.oily"));
    }

    @Test
    void thePropertyOfATermKeepsItsSource() {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.computeIfPresent(
                "catalogue/soil-terms.yaml",
                (k, t) -> t.replace("polarity: polarity-a", "polarity: {value: polarity-a, source: \"BOOK, 3\"}"));
        Edition cited = SmallEdition.read(SmallEdition.files(texts));
        FactBase facts = facts(cited, Starter.task(cited, "title: t\nsoils: [{kind: soil-a}]\n"), Map.of());
        assertEquals("BOOK, 3", origin(facts, "soils/0", "kind.polarity").source());
        assertEquals("", origin(facts, "soils/0", "kind.oily").source());
    }

    @Test
    void aProcessBelongsToItselfAndToEveryGroupAboveIt() {
        FactBase facts = facts("");
        assertEquals(Value.term("water-a"), value(facts, "process/water-a", "id"));
        assertEquals(Things.all("water-a", "water", "any"), value(facts, "process/water-a", "node"));
        assertEquals(Value.number(333.15), value(facts, "process/water-a", "heat"));
        assertEquals(Value.term("medium-a"), value(facts, "process/water-a", "medium"));
        assertEquals(Value.term("solvent-class-a"), value(facts, "process/water-a", "medium.class"));
        assertTrue(facts.fact("process/water").isEmpty(), "a group is no process");
    }

    @Test
    void everyDeclaredAttributeIsAFactAndUnknownUntilGiven() {
        FactBase facts = facts("attributes: {att-soil: soil-b}\n");
        assertEquals(Value.term("soil-b"), value(facts, "attributes/att-soil", "value"));
        assertEquals(Value.flag(false), value(facts, "attributes/att-soil", "value.oily"));
        assertEquals(Value.UNKNOWN, value(facts, "attributes/att-flag", "value"));
        assertEquals(
                Origin.Kind.NOT_GIVEN,
                origin(facts, "attributes/att-flag", "value").kind());
    }

    @Test
    void formulasReadEntriesOtherGroupsAndAssumptions() {
        // 1200 parts an hour of 100 cm² are 12 m² an hour; with 2 g/m² 24 g an hour, in eight hours 192 g.
        String task = "part: {rate: 1200 1/h, wettedArea: 100 cm2}\nsoils: [{amount: 2 g/m2}]\n"
                + "features: [{depth: 6 mm, diameter: 2 mm}]\ndemand: {particleCode: 'A(B-I4/J-K00)', rest: not applicable}\n";
        FactBase facts = facts(task);
        assertEquals(12, in(facts, "part", "areaPerHour", "m2/h", Dimension.AREA_RATE), 1e-9);
        assertEquals(24, in(facts, "soils/0", "load", "g/h", Dimension.MASS_RATE), 1e-9);
        assertEquals(192, in(facts, "soils/0", "loadPerShift", "g", Dimension.MASS), 1e-9);
        assertEquals(3, in(facts, "features/0", "slenderness", "", Dimension.RATIO), 1e-9);
        assertEquals(Value.number(600e-6), value(facts, "demand", "largestParticle"));
        FactBase halfShift = facts(
                EDITION, Starter.task(EDITION, "title: t\n" + task), Map.of("hours-per-shift", Value.number(4 * 3600)));
        assertEquals(96, in(halfShift, "soils/0", "loadPerShift", "g", Dimension.MASS), 1e-9);
        Origin origin = origin(facts, "soils/0", "load");
        assertEquals(Origin.Kind.COMPUTED, origin.kind());
        assertEquals("computed", origin.kind().word());
        assertEquals("amount per area × area an hour", origin.detail());
        assertEquals(List.of("soils/0/amount", "part/areaPerHour"), origin.inputs());
        assertEquals("definition", origin.source());
        assertEquals(
                Value.NOT_APPLICABLE,
                value(
                        facts("demand: {particleCode: not applicable, rest: not applicable}\n"),
                        "demand",
                        "largestParticle"));
    }

    @Test
    void anOriginTellsWhetherAValueWasGivenOrComesFromATree() {
        Given plain = Given.of(Value.term("soil-a"), "/soils/0/kind");
        Given tree = new Given(Value.term("soil-a"), "/soils/0/kind", "Tree: a; b", false, "");
        Given overruled = new Given(Value.term("soil-a"), "/soils/0/kind", "Tree: a; b", true, "");
        assertEquals(new Origin(Origin.Kind.GIVEN, "/soils/0/kind", List.of(), ""), ofSoil(plain));
        assertEquals(new Origin(Origin.Kind.TREE, "Tree: a; b", List.of(), ""), ofSoil(tree));
        assertEquals(
                new Origin(Origin.Kind.GIVEN, "/soils/0/kind; overrules Tree: a; b", List.of(), ""), ofSoil(overruled));
    }

    @Test
    void scalesOfHardnessThatContradictEachOtherAreReportedWithTheirEntry() {
        Diagnostics diagnostics = new Diagnostics();
        CleaningTask task = Starter.task(
                EDITION, "title: t\nmaterials: [{porous: yes}, {hardness: 20 HRC, tensileStrength: 2000 MPa}]\n");
        FactBuilder.build(task, EDITION, Map.of(), diagnostics);
        assertEquals(
                List.of(Message.CONTRADICTION, Message.CONTRADICTION),
                diagnostics.all().stream().map(d -> d.message()).toList());
        assertTrue(diagnostics.all().stream().allMatch(d -> d.place().pointer().equals("/materials/1")));
        assertTrue(diagnostics.all().get(0).text().contains("strength given on different scales"));
    }

    private static Origin ofSoil(Given given) {
        CleaningTask task = new CleaningTask("t", "", Map.of(), Map.of())
                .with(Group.SOILS, new CleaningTask.Entries(List.of(new Entry(Map.of("kind", given))), false));
        return origin(facts(EDITION, task, Map.of()), "soils/0", "kind");
    }

    private static FactBase facts(String yaml) {
        return facts(EDITION, Starter.task(EDITION, "title: t\n" + yaml), Map.of());
    }

    private static FactBase facts(Edition edition, CleaningTask task, Map<String, Value> changed) {
        Diagnostics diagnostics = new Diagnostics();
        FactBase facts = FactBuilder.build(task, edition, changed, diagnostics);
        assertEquals(List.of(), diagnostics.all());
        return facts;
    }

    private static double in(FactBase facts, String id, String field, String unit, Dimension dimension) {
        return Quantities.fromSi(((Value.Number) value(facts, id, field)).span().low(), unit, dimension);
    }

    private static Value value(FactBase facts, String id, String field) {
        Fact fact = facts.fact(id).orElseThrow();
        return fact.value(field(fact, field));
    }

    private static Origin origin(FactBase facts, String id, String field) {
        Fact fact = facts.fact(id).orElseThrow();
        return fact.origin(field(fact, field));
    }

    private static String name(FactBase facts, String id) {
        return facts.fact(id).orElseThrow().name();
    }

    private static Field field(Fact fact, String name) {
        return fact.type().field(name).orElseThrow();
    }
}

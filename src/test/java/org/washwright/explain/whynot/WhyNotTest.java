package org.washwright.explain.whynot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Outcome;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** What keeps rules from firing; whether a rule fired is held against the interpreter, and against Drools in the long tier. */
class WhyNotTest {

    private static Outcome outcome(String yaml) {
        return Starter.swept().outcome(Starter.task(yaml), Starter.WISHES);
    }

    @Test
    void ofTwoDemoTasksAllRulesAreWhatTheInterpreterMadeOfThem() {
        Edition edition = Starter.edition();
        Agreeing agreeing = new Agreeing(
                edition,
                ReferenceInterpreter.factory().prepare(edition.lineRules(), edition.levels(), edition.types()));
        for (String name : List.of("manifold.yaml", "light-guides.yaml")) {
            Outcome outcome = Starter.interpreted().outcome(Starter.demoTasks().get(name), Starter.WISHES);
            assertEquals(List.of(), agreeing.differences(outcome), name);
            assertEquals(List.of(), Agreeing.untold(new WhyNot(outcome).rules()), name);
        }
    }

    @Test
    void aFailedConditionIsShownWithTheValueThatFailsIt() {
        WhyNot whyNot = new WhyNot(outcome("title: Plate\npart: {wallThickness: 6 mm}\n"));
        Outlook outlook = whyNot.rule(whyNot.find("at-10").orElseThrow());
        assertEquals(State.FAILED, outlook.state());
        assertEquals(
                "the thinnest wall of the part is below 1 mm",
                outlook.failing().get(0).asks());
        assertEquals("6 mm", outlook.failing().get(0).found());
        assertEquals("part/wallThickness", outlook.failing().get(0).about());
    }

    @Test
    void whatIsNotKnownIsShownAsOpen() {
        WhyNot whyNot = new WhyNot(outcome("title: Plate\n"));
        Outlook outlook = whyNot.rule(whyNot.find("AT-10").orElseThrow());
        assertEquals(State.UNDECIDED, outlook.state());
        assertTrue(outlook.open().stream().anyMatch(c -> c.about().equals("part/wallThickness")), outlook.toString());
    }

    @Test
    void whatStandsInTheWayOfANotIsNamed() {
        WhyNot whyNot = new WhyNot(outcome("title: Plate\nsoils: [{kind: cutting-oil}]\n"));
        List<Outlook.Condition> inTheWay = whyNot.rules().stream()
                .flatMap(o -> o.failing().stream())
                .filter(c -> c.found().startsWith("there is ") && !c.found().equals("there is none"))
                .toList();
        assertFalse(inTheWay.isEmpty());
    }

    @Test
    void aProcessIsShownWithWhatRulesItOutAndWhatWouldSpeakForIt() {
        Outcome outcome = Starter.swept().outcome(Starter.demoTasks().get("manifold.yaml"), Starter.WISHES);
        WhyNot whyNot = new WhyNot(outcome);
        for (var line : outcome.lines()) {
            ProcessOutlook process = whyNot.process(line.process().id());
            assertEquals(line.status().word(), process.status());
            assertEquals(
                    line.refusals().size() + line.conditions().size(),
                    process.reasons().size());
            process.reasons().forEach(r -> assertFalse(r.rules().isEmpty(), r.text()));
            process.silent().forEach(o -> assertTrue(o.state() != State.FIRED, o.rule()));
            assertEquals(List.of(), Agreeing.untold(process.silent()));
        }
        assertThrows(NoSuchElementException.class, () -> whyNot.process("no-such-process"));
    }
}

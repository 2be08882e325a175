package org.washwright.explain.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

/** Whole searches for up to three changes by the whole rulebook: within the budget, honest about it, and every promise kept. */
@Tag("load")
class DemoChangesIT {

    @ParameterizedTest
    @CsvSource({
        "bearing-rings.yaml, bring-in, phosphoric-cleaning",
        "brass-fittings.yaml, bring-in, pure-water-megasonic",
        "implants.yaml, bring-in, plasma-jet",
        "titanium-brackets.yaml, bring-in, ethanol-dip",
        "contract-shop.yaml, let-stand, siloxane-dip",
        "injector-bodies.yaml, displace-first, ''",
        "steel-clips.yaml, first, neutral-spray",
    })
    void every_set_keeps_its_promise_and_what_was_left_out_is_said(String name, String goal, String process) {
        CleaningTask task = Starter.demoTasks().get(name);
        Changes changes = new ChangeFinder(Starter.swept())
                .find(
                        task,
                        Starter.WISHES,
                        new Goal(Goal.Kind.byWord(goal).orElseThrow(), process),
                        ChangeFinder.Scope.USUAL,
                        n -> {});
        System.out.println(name + " " + goal + " " + process + ": "
                + changes.search().evaluations() + " evaluations, "
                + changes.proposals().size() + " sets; " + changes.search().text());
        assertTrue(changes.search().evaluations() <= ChangeFinder.MOST_EVALUATIONS);
        for (Changes.Size s : changes.search().sizes()) {
            assertEquals(s.sets(), s.passedOver() + s.tried() + s.left());
            assertEquals(s.left() == 0, s.among().isEmpty());
        }
        assertEquals(
                changes.search().complete(),
                changes.search().text().stream().noneMatch(t -> t.contains("not searched to the end")));
        assertEquals(List.of(), Promises.broken(changes, task, Starter.swept()));
    }
}

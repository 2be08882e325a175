package org.washwright.cases;

import java.util.List;
import java.util.Optional;
import org.washwright.document.Place;
import org.washwright.rule.Basis;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;

/**
 * A task with what an edition must make of it.
 *
 * @param id unique in the edition
 * @param title what it shows
 * @param basis where the expected outcome comes from
 * @param sources what it cites
 * @param place where it stands
 * @param asOf date for which law is read, ISO 8601; empty when the outcome hangs on no date
 * @param task the task
 * @param expectations what must hold of the outcome, in the order written
 */
public record Case(
        String id,
        String title,
        Basis basis,
        List<Rule.Cite> sources,
        Place place,
        Optional<String> asOf,
        CleaningTask task,
        List<Expectation> expectations) {

    /** Keeps copies. */
    public Case {
        sources = List.copyOf(sources);
        expectations = List.copyOf(expectations);
    }
}

package org.washwright.analysis;

import java.util.List;
import java.util.Optional;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;

/** Finds for a rule a task on which it fires, and for each of its conditions tasks on which that one alone fails. */
final class ExampleSearch {

    private final Edition edition;
    private final Choices choices;
    private final WitnessSearch search;
    private final WitnessSearch shortSearch;
    private final String asOf;

    /**
     * A search for examples.
     *
     * @param search looks for tasks on which a rule fires
     * @param shortSearch looks for what no variant of such a task has shown; there may be none
     */
    ExampleSearch(Edition edition, Choices choices, WitnessSearch search, WitnessSearch shortSearch, String asOf) {
        this.edition = edition;
        this.choices = choices;
        this.search = search;
        this.shortSearch = shortSearch;
        this.asOf = asOf;
    }

    /** Examples of a rule, the first one a task on which it fires; none when no such task was found. */
    List<Example> of(Rule rule) {
        Optional<WitnessSearch.Found> witness = search.fires(List.of(rule), x -> true);
        if (witness.isEmpty()) {
            return List.of();
        }
        Gathering g = new Gathering(edition, choices, shortSearch, asOf, rule);
        CleaningTask base = Variants.closed(witness.get().task());
        g.add(true, base, -1, Optional.empty(), "the first task found");
        g.around(base);
        for (Rule alternative : Rewrites.alternatives(rule)) {
            search.fires(alternative, x -> true).ifPresent(found -> {
                CleaningTask task = Variants.closed(found.task());
                g.add(true, task, -1, Optional.empty(), "by another alternative");
                g.around(task);
            });
        }
        for (int i = 0; i < rule.patterns().size(); i++) {
            g.pattern(i);
        }
        g.joins(base);
        return g.examples();
    }
}

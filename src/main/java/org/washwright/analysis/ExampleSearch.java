package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Value;

/** Finds for a rule a task on which it fires, and for each of its conditions tasks on which that one alone fails. */
final class ExampleSearch {

    private final Edition edition;
    private final Space space;
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
    ExampleSearch(
            Edition edition,
            Space space,
            Choices choices,
            WitnessSearch search,
            WitnessSearch shortSearch,
            String asOf) {
        this.edition = edition;
        this.space = space;
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
        Gathering g = new Gathering(edition, space, choices, shortSearch, asOf, rule);
        CleaningTask base = Variants.closed(witness.get().task());
        g.add(true, base, -1, Optional.empty(), "the first task found");
        g.around(base);
        swapped(base).stream().filter(g::fires).findFirst().ifPresent(task -> {
            g.add(true, task, -1, Optional.empty(), "said by a number");
            g.around(task);
        });
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

    /**
     * Tasks that say by a number what the given one says by a code: of a limit that may be given either way, only the number
     * can be brought close to what a rule asks.
     */
    private List<CleaningTask> swapped(CleaningTask base) {
        List<CleaningTask> out = new ArrayList<>();
        for (TaskEdit code : TaskEdit.given(base, edition)) {
            if (!(code.attribute().type() instanceof FieldType.CodeType) || isOff(code, base)) {
                continue;
            }
            CleaningTask without = code.set(base, Given.of(Value.NOT_APPLICABLE, code.pointer()));
            for (TaskEdit number : TaskEdit.given(base, edition)) {
                if (number.group().equals(code.group())
                        && number.attribute().type() instanceof FieldType.NumberType
                        && isOff(number, base)) {
                    out.addAll(choices.of(number).stream()
                            .map(given -> number.set(without, given))
                            .toList());
                }
            }
        }
        return out;
    }

    private static boolean isOff(TaskEdit edit, CleaningTask task) {
        return edit.in(task).map(g -> g.value() instanceof Value.NotApplicable).orElse(true);
    }
}

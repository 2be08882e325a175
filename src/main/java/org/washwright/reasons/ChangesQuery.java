package org.washwright.reasons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.washwright.explain.change.ChangeFinder;
import org.washwright.explain.change.Goal;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.rule.Edition;
import org.washwright.task.Group;

/** What is searched for, as it stands in an address. */
record ChangesQuery(Goal goal, ChangeFinder.Scope scope) {

    /**
     * Reads it.
     *
     * @param free keys of groups that may change too, each by itself or several with commas between
     * @throws Invalid with everything that is wrong
     */
    static ChangesQuery read(String goal, String process, List<String> free, int most, Edition edition) {
        List<ProblemError> errors = new ArrayList<>();
        Optional<Goal.Kind> kind = Goal.Kind.byWord(goal);
        if (kind.isEmpty()) {
            errors.add(ProblemError.at(
                    "goal",
                    goal,
                    "\"" + goal + "\" is no goal.",
                    "Write one of "
                            + String.join(
                                    ", ",
                                    Arrays.stream(Goal.Kind.values())
                                            .map(Goal.Kind::word)
                                            .toList())
                            + ".",
                    "unknown-reference"));
        }
        boolean known = edition.catalogue().leaves().stream().anyMatch(p -> p.id().equals(process));
        if (kind.filter(k -> k.needsProcess()).isPresent() && !known) {
            errors.add(ProblemError.at(
                    "process",
                    process,
                    process.isEmpty() ? "No process is named." : "\"" + process + "\" is no process of this edition.",
                    "Name a process that the answer lists.",
                    "unknown-reference"));
        }
        EnumSet<Group> freed = EnumSet.noneOf(Group.class);
        for (String key : free.stream()
                .flatMap(f -> Arrays.stream(f.split(",", -1)))
                .filter(f -> !f.isBlank())
                .toList()) {
            Optional<Group> group = Group.byKey(key).filter(ChangeFinder.FIXED::contains);
            group.ifPresent(freed::add);
            if (group.isEmpty()) {
                errors.add(ProblemError.at(
                        "free",
                        key,
                        "\"" + key + "\" is no group that is held fast.",
                        "Write one of "
                                + String.join(
                                        ", ",
                                        ChangeFinder.FIXED.stream()
                                                .map(Group::key)
                                                .toList())
                                + ".",
                        "unknown-reference"));
            }
        }
        if (most < 1 || most > ChangeFinder.MOST_CHANGES) {
            errors.add(ProblemError.at(
                    "most",
                    String.valueOf(most),
                    most + " is not 1 to " + ChangeFinder.MOST_CHANGES + ".",
                    "Write how many things may change at once.",
                    "out-of-range"));
        }
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return new ChangesQuery(
                new Goal(kind.orElseThrow(), kind.get().needsProcess() ? process : ""),
                new ChangeFinder.Scope(freed, most, ChangeFinder.MOST_EVALUATIONS));
    }
}

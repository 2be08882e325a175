package org.washwright.reasons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.explain.change.ChangeFinder;
import org.washwright.explain.change.Goal;

/** The form in which one says what is wanted otherwise. */
record ChangesForm(List<Option> goals, List<Choice> processes, List<Option> free) {

    /** Something to tick. */
    record Option(String id, String words, boolean ticked) {}

    /** A process to choose, under what it is now. */
    record Choice(String status, List<Option> options) {}

    static ChangesForm of(Answer answer, String goal, String process, List<String> free) {
        String chosen = goal.isEmpty() ? Goal.Kind.BRING_IN.word() : goal;
        List<Choice> processes = new ArrayList<>();
        processes.add(new Choice(
                "ruled out",
                answer.ruledOut().stream()
                        .map(r -> new Option(r.process(), r.name(), r.process().equals(process)))
                        .toList()));
        for (String status : List.of("conditional", "recommended")) {
            processes.add(new Choice(
                    status,
                    answer.candidates().stream()
                            .filter(c -> c.status().equals(status))
                            .map(c -> new Option(
                                    c.process(), c.name(), c.process().equals(process)))
                            .toList()));
        }
        processes.removeIf(p -> p.options().isEmpty());
        return new ChangesForm(
                Arrays.stream(Goal.Kind.values())
                        .map(k -> new Option(k.word(), words(k), k.word().equals(chosen)))
                        .toList(),
                processes,
                ChangeFinder.FIXED.stream()
                        .map(g -> new Option(g.key(), g.heading(), free.contains(g.key())))
                        .toList());
    }

    private static String words(Goal.Kind kind) {
        return switch (kind) {
            case BRING_IN -> "recommend this process";
            case LET_STAND -> "let this process stand, if only under conditions";
            case PUT_FIRST -> "put this process first";
            case DISPLACE_FIRST -> "take the first place from what is first now";
        };
    }
}

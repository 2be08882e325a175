package org.washwright.explain.whynot;

import java.util.List;

/**
 * What became of one rule on one task, or on the line of one process, and why.
 *
 * @param rule id of the rule
 * @param title its title
 * @param state what became of it
 * @param says the whole rule as a sentence
 * @param process id of the process it was looked at for; empty when for all of them
 * @param note why its conditions can't be looked at, in words; empty when they can
 * @param near the facts that come nearest to it, at most three sets that are equally near
 */
public record Outlook(
        String rule, String title, State state, String says, String process, String note, List<Near> near) {

    /** Keeps a copy. */
    public Outlook {
        near = List.copyOf(near);
    }

    /**
     * One choice of facts.
     *
     * @param facts names of the facts chosen, one for each pattern that asks for one
     * @param conditions the conditions of the rule on these facts, failing ones first, then open ones
     */
    public record Near(List<String> facts, List<Condition> conditions) {

        /** Keeps copies. */
        public Near {
            facts = List.copyOf(facts);
            conditions = List.copyOf(conditions);
        }
    }

    /**
     * One condition.
     *
     * @param asks what the rule asks for, in words
     * @param found what there is, in words
     * @param state whether it holds, fails or is undecided
     * @param about reference of the attribute, fact or list that it reads; empty when there is none
     * @param ofProcess true when it reads what the edition says of a process, which no task changes
     */
    public record Condition(String asks, String found, State state, String about, boolean ofProcess) {}

    /** Conditions of the nearest facts that fail; empty when none does. */
    public List<Condition> failing() {
        return of(State.FAILED);
    }

    /** Conditions of the nearest facts that are undecided. */
    public List<Condition> open() {
        return of(State.UNDECIDED);
    }

    private List<Condition> of(State wanted) {
        return near.stream()
                .limit(1)
                .flatMap(n -> n.conditions().stream())
                .filter(c -> c.state() == wanted)
                .toList();
    }
}

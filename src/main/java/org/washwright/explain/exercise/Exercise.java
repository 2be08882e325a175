package org.washwright.explain.exercise;

import java.util.List;
import java.util.Optional;

/**
 * What a trainee is asked. It holds nothing of the answer: neither what becomes of a process nor which reasons are true.
 *
 * @param title what people call it
 * @param instruction what to do, in the trainer's words; may be empty
 * @param seed what the wrong reasons and the order of all reasons were drawn by
 * @param processes the processes to judge, in order of their names
 */
public record Exercise(String title, String instruction, long seed, List<Asked> processes) {

    /** Most processes of an exercise. */
    public static final int MOST_PROCESSES = 8;

    /** Keeps a copy. */
    public Exercise {
        processes = List.copyOf(processes);
    }

    /**
     * A process to judge.
     *
     * @param process process id
     * @param name what a reader calls it
     * @param choices reasons to pick from: those of the answer among others of the edition
     */
    public record Asked(String process, String name, List<Choice> choices) {

        /** Keeps a copy. */
        public Asked {
            choices = List.copyOf(choices);
        }
    }

    /** A rule that may or may not be a reason. */
    public record Choice(String rule, String title) {}

    /** What is asked about a process. */
    public Optional<Asked> asked(String process) {
        return processes.stream().filter(p -> p.process().equals(process)).findFirst();
    }
}

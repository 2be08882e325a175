package org.washwright.training;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.problem.ProblemError;

/**
 * The form in which an exercise is set, with what was filled in.
 *
 * @param wish what was filled in
 * @param groups processes by what became of them, so that the trainer can mix
 * @param errors what is wrong
 */
record SetForm(ExerciseWish wish, List<Group> groups, List<ProblemError> errors) {

    /** Processes of one status. */
    record Group(String status, List<Process> processes) {}

    /** A process; {@code chosen} when it is to be judged. */
    record Process(String id, String name, boolean chosen) {}

    static SetForm of(Answer answer, ExerciseWish wish, List<ProblemError> errors) {
        List<Group> groups = new ArrayList<>();
        for (String status : List.of("recommended", "conditional")) {
            groups.add(new Group(
                    status,
                    answer.candidates().stream()
                            .filter(c -> c.status().equals(status))
                            .map(c -> new Process(
                                    c.process(), c.name(), wish.processes().contains(c.process())))
                            .toList()));
        }
        groups.add(new Group(
                "ruled out",
                answer.ruledOut().stream()
                        .map(r -> new Process(
                                r.process(), r.name(), wish.processes().contains(r.process())))
                        .sorted(Comparator.comparing(Process::name))
                        .toList()));
        return new SetForm(
                wish, groups.stream().filter(g -> !g.processes().isEmpty()).toList(), errors);
    }

    /** What is wrong with a field; empty when nothing is. */
    public String error(String field) {
        return errors.stream()
                .filter(e -> e.pointer().equals(Optional.of(field)))
                .map(ProblemError::message)
                .findFirst()
                .orElse("");
    }
}

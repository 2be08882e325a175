package org.washwright.reasons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.washwright.assessment.Answer;

/** The processes whose story can be told, by what became of them. */
final class ReplayChoices {

    private ReplayChoices() {}

    /** Processes of one status; those that stand in their order, those ruled out by name. */
    record Group(String status, List<Choice> processes) {}

    /** A process. */
    record Choice(String id, String name) {}

    static List<Group> of(Answer answer) {
        List<Group> groups = new ArrayList<>();
        for (String status : List.of("recommended", "conditional")) {
            List<Choice> own = answer.candidates().stream()
                    .filter(c -> c.status().equals(status))
                    .map(c -> new Choice(c.process(), c.name()))
                    .toList();
            if (!own.isEmpty()) {
                groups.add(new Group(status, own));
            }
        }
        if (!answer.ruledOut().isEmpty()) {
            groups.add(new Group(
                    "ruled out",
                    answer.ruledOut().stream()
                            .map(r -> new Choice(r.process(), r.name()))
                            .sorted(Comparator.comparing(Choice::name))
                            .toList()));
        }
        return groups;
    }
}

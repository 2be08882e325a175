package org.washwright.explain.change;

import java.util.ArrayList;
import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

/** Holds a result against whole answers to the changed tasks. */
final class Promises {

    private Promises() {}

    /** What a result promises and an answer does not keep. */
    static List<String> broken(Changes changes, CleaningTask task, Assessor assessor) {
        List<String> broken = new ArrayList<>();
        for (Changes.Proposal p : changes.proposals()) {
            Answer answer = answer(task, p.changes(), assessor);
            if (!isReached(changes, answer)) {
                broken.add("does not reach the goal: " + p.changes());
            }
            p.elsewhere().first().ifPresent(f -> {
                if (!f.after().equals(first(answer))) {
                    broken.add("first is " + first(answer) + " after " + p.changes());
                }
            });
            p.elsewhere().gained().forEach(t -> expect(status(answer, t.process()), t.after(), p, broken));
            p.elsewhere().lost().forEach(t -> expect(status(answer, t.process()), t.after(), p, broken));
            p.elsewhere().moved().forEach(t -> expect(status(answer, t.process()), t.after(), p, broken));
            subsets(p, changes, task, assessor, broken);
            if (p.changes().size() == 1) {
                others(p.changes().get(0), changes, task, assessor, broken);
            }
        }
        return broken;
    }

    private static void subsets(
            Changes.Proposal p, Changes changes, CleaningTask task, Assessor assessor, List<String> broken) {
        int all = (1 << p.changes().size()) - 1;
        for (int bits = 1; bits < all; bits++) {
            List<Changes.Change> some = new ArrayList<>();
            for (int i = 0; i < p.changes().size(); i++) {
                if ((bits >> i & 1) == 1) {
                    some.add(p.changes().get(i));
                }
            }
            if (isReached(changes, answer(task, some, assessor))) {
                broken.add("a part is enough: " + some);
            }
        }
    }

    private static void others(
            Changes.Change c, Changes changes, CleaningTask task, Assessor assessor, List<String> broken) {
        for (Changes.Other o : c.others()) {
            Changes.Change other = new Changes.Change(
                    c.way(), c.pointer(), c.what(), c.from(), o.to(), o.value(), "", List.of(), c.effort(), List.of());
            if (!isReached(changes, answer(task, List.of(other), assessor))) {
                broken.add("the other value does not reach the goal: " + other);
            }
        }
    }

    private static void expect(String found, String promised, Changes.Proposal p, List<String> broken) {
        if (!found.equals(promised)) {
            broken.add(found + " instead of " + promised + " after " + p.changes());
        }
    }

    private static Answer answer(CleaningTask task, List<Changes.Change> changes, Assessor assessor) {
        return assessor.assess(Applied.to(task, changes, assessor.edition()), Starter.WISHES)
                .answer();
    }

    static boolean isReached(Changes changes, Answer answer) {
        return switch (Goal.Kind.byWord(changes.goal()).orElseThrow()) {
            case BRING_IN -> status(answer, changes.process()).equals("recommended");
            case LET_STAND -> !status(answer, changes.process()).equals("ruled out");
            case PUT_FIRST -> first(answer).equals(changes.process());
            case DISPLACE_FIRST -> !first(answer).equals(changes.process());
        };
    }

    private static String first(Answer answer) {
        return answer.candidates().isEmpty() ? "" : answer.candidates().get(0).process();
    }

    private static String status(Answer answer, String process) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .map(Answer.Candidate::status)
                .findFirst()
                .orElse("ruled out");
    }
}

package org.washwright.explain.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.washwright.analysis.TaskEdit;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.generate.Starter;
import org.washwright.quantity.Quantities;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Holds what is said of unknowns against whole answers. */
final class Claims {

    private Claims() {}

    static List<String> broken(FindOut found, CleaningTask task, Assessor assessor) {
        Map<String, String> before = statuses(answer(task, assessor));
        String first = first(answer(task, assessor));
        List<String> broken = new ArrayList<>();
        Stream.concat(found.matters().stream(), found.same().stream()).forEach(u -> {
            int changesFirst = 0;
            int changesStatus = 0;
            for (FindOut.Turn turn : u.outcomes()) {
                Answer answer = answer(with(task, turn, assessor), assessor);
                Map<String, String> after = statuses(answer);
                Map<String, String> claimed = new TreeMap<>(before);
                turn.elsewhere().gained().forEach(t -> claimed.put(t.process(), t.after()));
                turn.elsewhere().lost().forEach(t -> claimed.put(t.process(), t.after()));
                turn.elsewhere().moved().forEach(t -> claimed.put(t.process(), t.after()));
                if (!claimed.equals(after)) {
                    broken.add("statuses differ when " + u.pointer() + " is " + turn.to());
                }
                if (!turn.elsewhere().first().orElseThrow().after().equals(first(answer))) {
                    broken.add("another is first when " + u.pointer() + " is " + turn.to());
                }
                changesFirst += first(answer).equals(first) ? 0 : 1;
                changesStatus += after.equals(before) ? 0 : 1;
            }
            if (!u.outcomes().isEmpty()
                    && (u.firstShare() != (double) changesFirst / u.outcomes().size()
                            || u.statusShare()
                                    != (double) changesStatus / u.outcomes().size())) {
                broken.add("shares of " + u.pointer());
            }
        });
        return broken;
    }

    static boolean sameAnswer(CleaningTask one, CleaningTask other, Assessor assessor) {
        Answer a = answer(one, assessor);
        Answer b = answer(other, assessor);
        return statuses(a).equals(statuses(b)) && first(a).equals(first(b));
    }

    /** The task in which it turned out so, made from what the result says alone. */
    private static CleaningTask with(CleaningTask task, FindOut.Turn turn, Assessor assessor) {
        String ref = turn.pointer().substring(1);
        if (turn.way().equals("close")) {
            Group group = Group.byKey(ref).orElseThrow();
            return task.with(group, new CleaningTask.Entries(task.entries(group).entries(), false));
        }
        TaskEdit edit = TaskEdit.of(ref, assessor.edition()).orElseThrow();
        CleaningTask out = task;
        if (turn.way().equals("add")) {
            for (var a : edit.group().orElseThrow().attributes()) {
                if (!a.computed()) {
                    out = out.with(edit.group().get(), edit.index(), a.name(), Value.NOT_APPLICABLE);
                }
            }
        }
        out = edit.set(out, given(turn, edit));
        Group group = edit.group().orElseThrow();
        return turn.way().equals("add")
                ? out.with(group, new CleaningTask.Entries(out.entries(group).entries(), false))
                : out;
    }

    private static Given given(FindOut.Turn turn, TaskEdit edit) {
        if (turn.value().equals("not applicable")) {
            return Given.of(Value.NOT_APPLICABLE, turn.pointer());
        }
        if (edit.attribute().type() instanceof FieldType.NumberType n) {
            return Given.of(
                    Value.number(Quantities.read(turn.value(), n.dimension(), Place.ofFile("-"), new Diagnostics())
                            .orElseThrow()),
                    turn.pointer());
        }
        boolean code = edit.attribute().type() instanceof FieldType.CodeType;
        return new Given(Value.term(turn.value()), turn.pointer(), "", false, code ? turn.value() : "");
    }

    private static Answer answer(CleaningTask task, Assessor assessor) {
        return assessor.assess(task, Starter.WISHES).answer();
    }

    private static String first(Answer answer) {
        return answer.candidates().isEmpty() ? "" : answer.candidates().get(0).process();
    }

    private static Map<String, String> statuses(Answer answer) {
        Map<String, String> out = new TreeMap<>();
        answer.candidates().forEach(c -> out.put(c.process(), c.status()));
        answer.ruledOut().forEach(r -> out.put(r.process(), "ruled out"));
        return out;
    }
}

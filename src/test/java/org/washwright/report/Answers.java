package org.washwright.report;

import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

/** Demo tasks answered by the starter rulebook, as reports. */
final class Answers {

    private Answers() {}

    /** The report on a demo task as the program gives it. */
    static Report plain(String name) {
        CleaningTask task = Starter.demoTasks().get(name + ".yaml");
        FrozenAnswer frozen = Starter.interpreted().assess(task, Starter.WISHES);
        return Report.ofFirst(task.title(), task.notes(), frozen.hash(), frozen.answer());
    }

    /** The report on it with invented figures. */
    static Report designed(String name) {
        Report plain = plain(name);
        return of(plain.title(), "Two shifts; the lid of the furnace is shared.", InventedDesign.in(plain.answer()));
    }

    /** A report on an answer made by a test. */
    static Report of(String title, String notes, Answer answer) {
        return Report.ofFirst(title, notes, FrozenAnswer.of(answer).hash(), answer);
    }

    /** The same answer with nothing that may clean the task. */
    static Answer withoutCandidates(Answer a) {
        return new Answer(
                a.format(),
                a.request(),
                a.requestHash(),
                new Answer.Headline("Nothing stands.", "Every process is ruled out.", List.of()),
                a.intended(),
                a.facts(),
                a.firings(),
                List.of(),
                a.ruledOut(),
                a.cautions(),
                a.questions(),
                a.doubts(),
                a.verifications(),
                Optional.empty(),
                a.figures(),
                a.inputs(),
                a.rules(),
                a.sources());
    }
}

package org.washwright.line.sizing;

import java.util.List;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Design;
import org.washwright.assessment.Wishes;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Bundle;
import org.washwright.task.CleaningTask;

/** Designed lines of demo tasks, for tests that look at their figures. */
final class Designed {

    private static final String DATE = "2026-11-25";

    private final Answer answer;

    private Designed(Answer answer) {
        this.answer = answer;
    }

    /** A demo task by the starter rulebook. */
    static Designed demo(String task) {
        return demo(task, Map.of());
    }

    /** The same with assumptions changed. */
    static Designed demo(String task, Map<String, String> assumptions) {
        return of(Starter.swept(), Starter.edition(), Starter.demoTexts().get(task + ".yaml"), assumptions);
    }

    /** A demo task of which a piece of text is replaced. */
    static Designed changed(String task, String from, String to) {
        String text = Starter.demoTexts().get(task + ".yaml");
        if (!text.contains(from)) {
            throw new IllegalArgumentException(from + " is not in " + task);
        }
        return of(Starter.swept(), Starter.edition(), text.replace(from, to), Map.of());
    }

    /** A demo task by the starter rulebook with a file changed. */
    static Designed edited(String task, String file, String from, String to) {
        return edited(task, file, from, to, Map.of());
    }

    /** The same with assumptions changed. */
    static Designed edited(String task, String file, String from, String to, Map<String, String> assumptions) {
        Bundle starter = Bundle.starter();
        String text = starter.text(file);
        if (!text.contains(from)) {
            throw new IllegalArgumentException(from + " is not in " + file);
        }
        Edition edition =
                SmallEdition.read(starter.with(file, text.replace(from, to)).files());
        return of(
                Assessor.of(edition, SweepInference.factory()),
                edition,
                Starter.demoTexts().get(task + ".yaml"),
                assumptions);
    }

    private static Designed of(Assessor assessor, Edition edition, String text, Map<String, String> assumptions) {
        CleaningTask task = Starter.task(edition, text);
        return new Designed(assessor.assess(task, new Wishes(Map.of(), assumptions, DATE, 0))
                .answer());
    }

    Answer answer() {
        return answer;
    }

    Answer.Candidate candidate(String process) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(process + " does not stand"));
    }

    /** Place of a stage in the line of a process, from 1. */
    int place(String process, String stage) {
        List<Answer.Stage> stages = candidate(process).stages();
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).stage().equals(stage)) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(stage + " is no stage of " + process);
    }

    Design.Figure figure(String process, String kind, int place) {
        return candidate(process).design().orElseThrow().figures().stream()
                .filter(f -> f.figure().equals(kind) && f.stage() == place)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + kind + " at " + place + " of " + process));
    }

    /** Lowest value of a figure in the unit in which it is shown. */
    double low(String process, String kind, int place) {
        return figure(process, kind, place).low();
    }

    /** Highest value of a figure in the unit in which it is shown. */
    double high(String process, String kind, int place) {
        return figure(process, kind, place).high();
    }
}

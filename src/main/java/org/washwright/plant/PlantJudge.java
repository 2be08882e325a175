package org.washwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.line.ProcessLine;
import org.washwright.plant.PlantWeek.Load;
import org.washwright.plant.PlantWeek.TaskOnPlant;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/** Judges which tasks a plant can serve by one edition, and fills its week with them. */
public final class PlantJudge {

    /** Most tasks of a set. */
    public static final int MOST_TASKS = 200;

    /** The plant can serve the task. */
    public static final String SERVES = "serves";

    /** It can if something holds. */
    public static final String SERVES_IF = "serves if";

    /** It can't. */
    public static final String DOES_NOT_SERVE = "does not serve";

    private final Assessor assessor;
    private final Edition edition;
    private final Wishes wishes;

    /**
     * A judge.
     *
     * @param assessor answers each task
     * @param wishes date and assumptions; weights decide nothing here
     */
    public PlantJudge(Assessor assessor, Wishes wishes) {
        this.assessor = assessor;
        this.edition = assessor.edition();
        this.wishes = wishes;
    }

    /**
     * The whole set.
     *
     * @throws org.washwright.assessment.RefusedTask when a task or a wish can't be answered
     */
    public PlantWeek week(Plant plant, List<SetTask> tasks) {
        return gathered(plant, tasks.stream().map(t -> task(plant, t)).toList());
    }

    /**
     * One task of the set.
     *
     * @throws org.washwright.assessment.RefusedTask when it can't be answered
     */
    public TaskOnPlant task(Plant plant, SetTask set) {
        Outcome outcome = assessor.outcome(set.task(), wishes);
        ProcessLine line = outcome.line(plant.process()).orElseThrow();
        Grounds grounds = new Grounds(outcome, plant.process());
        PartFacts part = PartFacts.of(outcome);
        if (line.status() == ProcessLine.Status.RULED_OUT) {
            line.refusals().forEach(r -> grounds.verdict(true, r));
        } else {
            StageFit stages = new StageFit(plant, edition.catalogue(), line, grounds);
            stages.judge();
            new WindowFit(plant, edition.catalogue(), line, stages, grounds).judge();
        }
        new SizeFit(grounds).judge(plant, part);
        boolean served = grounds.blocks().isEmpty();
        Optional<Load> load = served
                ? Optional.of(new Loading(edition, assumptions(), plant).of(set.partsPerWeek(), part, line))
                : Optional.empty();
        return new TaskOnPlant(
                set.task().title(),
                served ? (grounds.conditions().isEmpty() ? SERVES : SERVES_IF) : DOES_NOT_SERVE,
                grounds.blocks(),
                served ? grounds.conditions() : List.of(),
                served ? grounds.settings() : List.of(),
                load);
    }

    /** The week of tasks that were judged one by one. */
    public PlantWeek gathered(Plant plant, List<TaskOnPlant> tasks) {
        PlantWeek.Week week = Filling.of(plant.hours(), tasks);
        return new PlantWeek(
                plant.name(),
                plant.process(),
                edition.catalogue().name("process", plant.process()),
                edition.name(),
                edition.meaningHash(),
                wishes.asOf(),
                headline(tasks) + " " + week.sentence(),
                tasks,
                week);
    }

    private static String headline(List<TaskOnPlant> tasks) {
        if (tasks.isEmpty()) {
            return "No task was named.";
        }
        List<String> said = new ArrayList<>();
        count(tasks, SERVES, "serves", said);
        count(tasks, SERVES_IF, "may serve", said);
        count(tasks, DOES_NOT_SERVE, "can't serve", said);
        String all = said.size() == 1
                ? said.get(0)
                : String.join(", ", said.subList(0, said.size() - 1)) + " and " + said.get(said.size() - 1);
        return "Of " + (tasks.size() == 1 ? "one task" : tasks.size() + " tasks") + " it " + all + ".";
    }

    private static void count(List<TaskOnPlant> tasks, String verdict, String verb, List<String> said) {
        long n = tasks.stream().filter(t -> t.verdict().equals(verdict)).count();
        if (n > 0) {
            said.add(verb + " " + (n == tasks.size() && n > 1 ? "all " + n : n));
        }
    }

    /** Assumptions changed by a wish; what is wrong with them was told when the first task was answered. */
    private Map<String, Value> assumptions() {
        Map<String, Value> out = new TreeMap<>();
        wishes.assumptions()
                .forEach((id, text) -> Optional.ofNullable(edition.assumptions().get(id))
                        .flatMap(a -> Quantities.readSpan(text, a.dimension(), Place.ofFile("-"), new Diagnostics()))
                        .ifPresent(s -> out.put(id, new Value.Number(s))));
        return out;
    }
}

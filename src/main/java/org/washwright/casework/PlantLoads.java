package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.plant.Plant;
import org.washwright.plant.PlantJudge;
import org.washwright.plant.PlantReader;
import org.washwright.plant.PlantWeek;
import org.washwright.plant.SetTask;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.quantity.Dimension;
import org.washwright.rule.Edition;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.TaskReader;
import org.washwright.task.Value;
import org.washwright.task.ValueReader;

/** Holds sets of tasks against a plant by the current edition. Nothing is stored. */
@ApplicationScoped
class PlantLoads {

    private final Tasks tasks;
    private final Plants plants;
    private final Assessments assessments;
    private final Editions editions;

    PlantLoads(Tasks tasks, Plants plants, Assessments assessments, Editions editions) {
        this.tasks = tasks;
        this.plants = plants;
        this.assessments = assessments;
        this.editions = editions;
    }

    /** The edition that judges. */
    EditionView current(UUID workspace) {
        return editions.requireCurrent(workspace);
    }

    /** Its words. */
    Edition words(UUID workspace) {
        return editions.content(workspace, current(workspace).id());
    }

    /** A task of the workspace that is asked for, with what was typed as its parts a week. */
    record Asked(UUID id, String partsPerWeek) {}

    /** What came of asking: the week of what could be judged, and what is wrong with the rest. */
    record Result(PlantWeek week, List<ProblemError> errors) {}

    /** Judges tasks of the workspace; one that can't be judged does not keep the others from it. */
    Result of(UUID workspace, Plant plant, List<Asked> asked) {
        Edition edition = words(workspace);
        PlantJudge judge = judge(workspace, Wishes.on(assessments.today()));
        List<ProblemError> errors = new ArrayList<>();
        List<PlantWeek.TaskOnPlant> judged = new ArrayList<>();
        for (Asked one : asked) {
            Diagnostics diagnostics = new Diagnostics();
            String field = "parts-" + one.id();
            Value parts = parts(
                    new Node.ScalarNode(new Place(ProblemErrors.BODY, 0, 0, field), one.partsPerWeek(), false),
                    edition,
                    diagnostics);
            Optional<CleaningTask> task = kept(workspace, one.id(), edition, field, errors);
            errors.addAll(ProblemErrors.of(diagnostics.all()));
            if (task.isPresent() && !diagnostics.hasErrors()) {
                try {
                    judged.add(judge.task(plant, new SetTask(task.get(), parts)));
                } catch (RefusedTask refusal) {
                    errors.add(refused("pick-" + one.id(), task.get().title()));
                }
            }
        }
        return new Result(judge.gathered(plant, judged), errors);
    }

    private static ProblemError refused(String pointer, String title) {
        return ProblemError.at(
                pointer,
                title,
                "This task can't be answered as it stands and was left out.",
                "Open the task; it says what is wrong.",
                "task-refused");
    }

    /** Judges what a request asks of a plant that is kept. */
    PlantWeek ofRequest(UUID workspace, UUID plant, byte[] body) {
        Edition edition = words(workspace);
        GivenPlant given = GivenPlant.read(plants.document(workspace, plant).getBytes(StandardCharsets.UTF_8), edition);
        return ofRequest(workspace, Optional.of(given.plant()), body, edition);
    }

    /** Judges what a request asks of the plant that it brings along. */
    PlantWeek ofRequest(UUID workspace, byte[] body) {
        return ofRequest(workspace, Optional.empty(), body, words(workspace));
    }

    private PlantWeek ofRequest(UUID workspace, Optional<Plant> kept, byte[] body, Edition edition) {
        Diagnostics diagnostics = new Diagnostics();
        List<ProblemError> errors = new ArrayList<>();
        Node node = DocumentReader.read(ProblemErrors.BODY, body, diagnostics)
                .orElseThrow(() -> new Invalid(ProblemErrors.of(diagnostics.all())));
        MapReader map = MapReader.of(node, "the request", diagnostics);
        Optional<Plant> plant = kept.isPresent() ? kept : inline(map, edition, diagnostics);
        List<SetTask> set = set(workspace, map, edition, diagnostics, errors);
        Wishes wishes = Wishes.on(assessments.today());
        try {
            wishes = WishesReader.read(map, assessments.today(), diagnostics);
        } catch (Invalid refusal) {
            errors.addAll(0, refusal.errors());
        }
        if (!errors.isEmpty() || plant.isEmpty()) {
            throw new Invalid(errors);
        }
        return judged(plant.get(), set, judge(workspace, wishes));
    }

    private static PlantWeek judged(Plant plant, List<SetTask> set, PlantJudge judge) {
        List<ProblemError> errors = new ArrayList<>();
        List<PlantWeek.TaskOnPlant> judged = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            try {
                judged.add(judge.task(plant, set.get(i)));
            } catch (RefusedTask refusal) {
                String at = "/tasks/" + i + "/task";
                ProblemErrors.of(refusal.diagnostics())
                        .forEach(e -> errors.add(ProblemError.at(
                                at + e.pointer().orElse(""), e.value().orElse(""), e.message(), e.advice(), e.code())));
            }
        }
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return judge.gathered(plant, judged);
    }

    private static Optional<Plant> inline(MapReader map, Edition edition, Diagnostics diagnostics) {
        Optional<Node> given = map.get("plant");
        if (given.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, map.place(), "", "the request", "plant");
        }
        return given.flatMap(n -> PlantReader.read(n, edition, diagnostics));
    }

    private List<SetTask> set(
            UUID workspace, MapReader map, Edition edition, Diagnostics diagnostics, List<ProblemError> errors) {
        if (map.get("tasks").isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, map.place(), "", "the request", "tasks");
        }
        List<Node> items = map.list("tasks");
        if (items.size() > PlantJudge.MOST_TASKS) {
            diagnostics.add(
                    Message.LIST_TOO_LONG,
                    map.get("tasks").orElseThrow().place(),
                    String.valueOf(items.size()),
                    "tasks",
                    PlantJudge.MOST_TASKS);
            return List.of();
        }
        List<SetTask> set = new ArrayList<>();
        for (Node item : items) {
            MapReader one = MapReader.of(item, "a task of the set", diagnostics);
            Optional<Node> id = one.get("id");
            Optional<Node> inline = one.get("task");
            Value parts = one.get("partsPerWeek")
                    .map(n -> parts(n, edition, diagnostics))
                    .orElse(Value.UNKNOWN);
            one.noMore();
            Optional<CleaningTask> task = Optional.empty();
            if (id.isPresent() == inline.isPresent()) {
                errors.add(ProblemError.at(
                        item.place().pointer(),
                        "",
                        "A task of the set needs exactly one of id and task.",
                        "Name a kept task by its id, or write the task out.",
                        "one-of"));
            } else if (id.isPresent()) {
                task = byId(workspace, id.get(), edition, errors);
            } else {
                task = TaskReader.read(inline.get(), edition, diagnostics);
            }
            task.ifPresent(t -> set.add(new SetTask(t, parts)));
        }
        return set;
    }

    private Optional<CleaningTask> byId(UUID workspace, Node id, Edition edition, List<ProblemError> errors) {
        try {
            return kept(
                    workspace, UUID.fromString(id.shown()), edition, id.place().pointer(), errors);
        } catch (IllegalArgumentException e) {
            errors.add(unknown(id.place().pointer(), id.shown()));
            return Optional.empty();
        }
    }

    private Optional<CleaningTask> kept(
            UUID workspace, UUID id, Edition edition, String pointer, List<ProblemError> errors) {
        try {
            byte[] document = tasks.document(workspace, id).getBytes(StandardCharsets.UTF_8);
            Optional<CleaningTask> task =
                    GivenTask.tried(document, edition).task().map(GivenTask::task);
            if (task.isEmpty()) {
                errors.add(refused(pointer, tasks.view(workspace, id).title()));
            }
            return task;
        } catch (NotFound e) {
            errors.add(unknown(pointer, id.toString()));
            return Optional.empty();
        }
    }

    private static ProblemError unknown(String pointer, String id) {
        return ProblemError.at(
                pointer,
                id,
                "There is no such cleaning task in this workspace.",
                "GET /api/tasks lists them.",
                "not-found");
    }

    private static Value parts(Node node, Edition edition, Diagnostics diagnostics) {
        return new ValueReader(edition, diagnostics)
                .value(node, FieldType.number(Dimension.RATIO))
                .orElse(Value.UNKNOWN);
    }

    private PlantJudge judge(UUID workspace, Wishes wishes) {
        return new PlantJudge(editions.assessor(workspace, current(workspace).id()), wishes);
    }
}

package org.washwright.casework;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Node;
import org.washwright.explain.compare.Change;
import org.washwright.explain.compare.DocumentChanges;
import org.washwright.explain.compare.TaskChanges;
import org.washwright.http.Slice;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskWriter;
import org.washwright.taskfile.TaskExport;
import org.washwright.taskfile.TaskFormat;

/** Kept answers varied: what other values would give, without keeping anything, and kept as a task of its own. */
@ApplicationScoped
public class Variants {
    private final Tasks tasks;
    private final Assessments assessments;
    private final Answers answers;
    private final Editions editions;

    Variants(Tasks tasks, Assessments assessments, Answers answers, Editions editions) {
        this.tasks = tasks;
        this.assessments = assessments;
        this.answers = answers;
        this.editions = editions;
    }

    /**
     * What the edition of a kept answer says of its task with these changes, by the same wishes; nothing is kept. Costs one
     * evaluation.
     *
     * @throws Invalid with everything that is wrong with the changes
     */
    public FrozenAnswer tried(UUID workspace, KeptAnswer kept, List<Change> changes) {
        return answered(workspace, kept, changed(kept, changes));
    }

    private static CleaningTask changed(KeptAnswer kept, List<Change> changes) {
        Diagnostics diagnostics = new Diagnostics();
        return TaskChanges.apply(kept.asked().task(), changes, kept.edition(), diagnostics)
                .orElseThrow(() -> new Invalid(ProblemErrors.of(diagnostics.all())));
    }

    private FrozenAnswer answered(UUID workspace, KeptAnswer kept, CleaningTask task) {
        try {
            return editions.indexed(workspace, kept.view().editionId())
                    .assess(task, kept.asked().wishes());
        } catch (RefusedTask refusal) {
            throw new Invalid(ProblemErrors.of(refusal.diagnostics()));
        }
    }

    /**
     * Keeps the changed task as a variant of the one that was answered, and its answer by the same edition and wishes. Where the
     * task was not changed since, what is not changed stays as it was typed.
     *
     * @throws Invalid with everything that is wrong with title or changes; nothing is kept then
     */
    public KeptAnswer keep(UUID workspace, Person by, KeptAnswer kept, String title, List<Change> changes) {
        CleaningTask changed = changed(kept, changes);
        GivenTask given = GivenTask.read(document(workspace, kept, title, changes, changed), kept.edition());
        FrozenAnswer frozen = answered(workspace, kept, given.task());
        AssessmentView made = QuarkusTransaction.requiringNew().call(() -> {
            TaskView variant =
                    tasks.addVariant(workspace, by, given, kept.task().id());
            return assessments.keep(workspace, variant, kept.view().editionId(), frozen, by);
        });
        return answers.open(workspace, made.id());
    }

    private String document(UUID workspace, KeptAnswer kept, String title, List<Change> changes, CleaningTask changed) {
        if (kept.isOutdated()) {
            CleaningTask titled = new CleaningTask(title, "", changed.lists(), changed.declared());
            return TaskWriter.yaml(titled, kept.edition(), "");
        }
        String original = tasks.document(workspace, kept.task().id());
        Node document = DocumentChanges.titled(
                DocumentChanges.apply(GivenTask.nodes(original), changes, kept.edition()), title);
        TaskFormat format = original.stripLeading().startsWith("{") ? TaskFormat.JSON : TaskFormat.YAML;
        return new String(new TaskExport(kept.edition()).task(document, format), StandardCharsets.UTF_8);
    }

    /** Answers the task of a kept answer as it stands now by another released edition, with the same wishes, and keeps that. */
    public KeptAnswer again(UUID workspace, Person by, KeptAnswer kept, UUID edition) {
        AssessmentView made = assessments.assess(workspace, by, kept.task().id(), edition, portable(kept));
        return answers.open(workspace, made.id());
    }

    /** Wishes for another edition: weights that were the edition's own were nobody's wish. */
    private static Wishes portable(KeptAnswer kept) {
        Wishes wishes = kept.asked().wishes();
        Map<String, Double> weights = new TreeMap<>(wishes.weights());
        kept.edition().grading().areas().forEach(a -> weights.remove(a.id(), a.weight()));
        return new Wishes(weights, wishes.comparisons(), wishes.assumptions(), wishes.asOf(), wishes.seed());
    }

    /** The task that this one was made from, and those made from it or from the same one; without itself. */
    public List<TaskView> family(UUID workspace, TaskView task) {
        List<TaskView> family = new ArrayList<>();
        Optional<UUID> original = task.variantOf();
        original.ifPresent(id -> {
            family.add(tasks.view(workspace, id));
            family.addAll(tasks.variants(workspace, id));
        });
        family.addAll(tasks.variants(workspace, task.id()));
        return family.stream().filter(t -> !t.id().equals(task.id())).toList();
    }

    /** Released editions of a workspace, changed last first, at most 100. */
    public List<EditionView> released(UUID workspace) {
        return editions.list(workspace, Slice.of("0", "100")).items().stream()
                .filter(EditionView::isReleased)
                .toList();
    }
}

package org.washwright.training;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.assessment.Answer;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.engine.FactBase;
import org.washwright.explain.exercise.Comparison;
import org.washwright.explain.exercise.ExerciseMaker;
import org.washwright.explain.exercise.Prediction;
import org.washwright.explain.exercise.PredictionReader;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rulebook.Editions;

/** Sets exercises from kept answers and compares what is predicted; says who may see what. */
@ApplicationScoped
class ExerciseDesk {
    private final Answers answers;
    private final Editions editions;
    private final Exercises exercises;

    ExerciseDesk(Answers answers, Editions editions, Exercises exercises) {
        this.answers = answers;
        this.editions = editions;
        this.exercises = exercises;
    }

    /** The answer that an exercise is, or is to be, made from. */
    KeptAnswer answer(UUID workspace, UUID assessment) {
        return answers.open(workspace, assessment);
    }

    /**
     * Sets an exercise.
     *
     * @throws Invalid with every error at once
     */
    SetExercise set(UUID workspace, Person by, UUID assessment, ExerciseWish wish) {
        KeptAnswer kept = answers.open(workspace, assessment);
        List<ProblemError> errors = new ArrayList<>(wish.errors());
        Set<String> judged = judged(kept.answer());
        wish.processes().stream()
                .filter(p -> !judged.contains(p))
                .forEach(p -> errors.add(ProblemError.at(
                        "/processes",
                        p,
                        "This answer judges no such process.",
                        "Choose from those on the page of the assessment.",
                        "unknown-reference")));
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        return exercises.add(
                workspace,
                by,
                assessment,
                new ExerciseMaker(kept.answer(), kept.edition())
                        .make(wish.title(), wish.instruction(), wish.seed(), wish.processes()),
                wish.day());
    }

    private static Set<String> judged(Answer answer) {
        Set<String> out = new HashSet<>();
        answer.candidates().forEach(c -> out.add(c.process()));
        answer.ruledOut().forEach(r -> out.add(r.process()));
        return out;
    }

    /**
     * Keeps a try, with how it compares.
     *
     * @throws Invalid with every error at once; then nothing is kept
     */
    TryView submit(UUID workspace, Person by, UUID exercise, byte[] body) {
        SetExercise set = exercises.view(workspace, exercise);
        Diagnostics diagnostics = new Diagnostics();
        Prediction prediction = PredictionReader.read(ProblemErrors.BODY, body, set.exercise(), diagnostics)
                .orElseThrow(() -> new Invalid(ProblemErrors.of(diagnostics.all())));
        KeptAnswer kept = answers.open(workspace, set.assessment());
        FactBase facts = editions.indexed(workspace, kept.view().editionId())
                .outcome(kept.asked().task(), kept.asked().wishes())
                .facts();
        Comparison comparison = new Comparison(set.exercise(), kept.answer(), kept.edition(), facts);
        return exercises.addTry(workspace, by, exercise, prediction, comparison.of(prediction));
    }

    /** Tries that the caller may see: all for a trainer, else the caller's own. */
    List<TryView> tries(Caller caller, UUID exercise) {
        return caller.mayTrain()
                ? exercises.tries(caller.workspaceId(), exercise, Optional.empty())
                : own(caller, exercise);
    }

    /** The caller's own tries. */
    List<TryView> own(Caller caller, UUID exercise) {
        return exercises.tries(caller.workspaceId(), exercise, Optional.of(caller.accountId()));
    }

    /** One of them. */
    TryView one(Caller caller, UUID exercise, UUID id) {
        return tries(caller, exercise).stream()
                .filter(t -> t.id().equals(id))
                .findFirst()
                .orElseThrow(() -> NotFound.of("try", id));
    }
}

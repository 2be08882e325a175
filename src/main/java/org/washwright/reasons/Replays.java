package org.washwright.reasons;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.replay.Replay;
import org.washwright.problem.NotFound;

/** Walks through kept answers. */
@ApplicationScoped
class Replays {
    private final Answers answers;

    Replays(Answers answers) {
        this.answers = answers;
    }

    /** A walk and the answer that it is through. */
    record Walk(KeptAnswer kept, Replay replay) {}

    /** The whole walk when no process is named, else the story of that one. */
    Walk of(UUID workspace, UUID id, String process) {
        return walk(answers.open(workspace, id), process);
    }

    /** The same where the task stands in the address too. */
    Walk of(UUID workspace, UUID task, UUID id, String process) {
        return walk(answers.open(workspace, task, id), process);
    }

    private static Walk walk(KeptAnswer kept, String process) {
        if (process.isEmpty()) {
            return new Walk(kept, Replay.of(kept.answer()));
        }
        return new Walk(
                kept,
                Replay.of(kept.answer(), process)
                        .orElseThrow(() -> new NotFound("This assessment judges no process of that name;"
                                + " those it judges stand on its page.")));
    }
}

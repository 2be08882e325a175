package org.washwright.casework;

import java.util.Optional;
import java.util.UUID;

/**
 * What a form is about: a new task, a change of one, or a draft of either.
 *
 * @param task the task it changes
 * @param version version of that task which is changed
 * @param draft the draft it is kept in
 */
record FormOf(Optional<UUID> task, int version, Optional<UUID> draft) {

    static final FormOf NEW = new FormOf(Optional.empty(), 0, Optional.empty());

    static FormOf task(UUID id, int version) {
        return new FormOf(Optional.of(id), version, Optional.empty());
    }

    static FormOf draft(DraftView draft) {
        return new FormOf(draft.task(), draft.taskVersion(), Optional.of(draft.id()));
    }

    /** Where the form is sent. */
    public String action() {
        return draft.map(id -> "/tasks/drafts/" + id)
                .orElseGet(() -> task.map(id -> "/tasks/" + id + "/edit").orElse("/tasks/new"));
    }

    /** True when it changes a task that is there. */
    public boolean existing() {
        return task.isPresent();
    }

    /** True when it is kept as a draft. */
    public boolean kept() {
        return draft.isPresent();
    }
}

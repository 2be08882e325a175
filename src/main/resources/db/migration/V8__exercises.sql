-- Exercises made from kept answers, and what was predicted in each. Documents are JSON as text.
CREATE TABLE exercise (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL REFERENCES workspace,
    assessment_id   uuid        NOT NULL REFERENCES assessment,
    title           text        NOT NULL CHECK (length(title) BETWEEN 1 AND 200),
    document        text        NOT NULL CHECK (length(document) <= 200000),
    due             date,
    created_by      uuid        NOT NULL,
    created_by_name text        NOT NULL,
    created_at      timestamptz NOT NULL,
    UNIQUE (workspace_id, id),
    FOREIGN KEY (workspace_id, created_by) REFERENCES account (workspace_id, id)
);
CREATE INDEX exercise_workspace ON exercise (workspace_id, created_at DESC);

-- Every try is kept, with the feedback as it was given.
CREATE TABLE exercise_try (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL,
    exercise_id  uuid        NOT NULL,
    prediction   text        NOT NULL CHECK (length(prediction) <= 200000),
    feedback     text        NOT NULL CHECK (length(feedback) <= 1000000),
    made_by      uuid        NOT NULL,
    made_by_name text        NOT NULL,
    made_at      timestamptz NOT NULL,
    FOREIGN KEY (workspace_id, exercise_id) REFERENCES exercise (workspace_id, id),
    FOREIGN KEY (workspace_id, made_by) REFERENCES account (workspace_id, id)
);
CREATE INDEX exercise_try_exercise ON exercise_try (workspace_id, exercise_id, made_at);

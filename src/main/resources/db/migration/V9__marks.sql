-- What a reader holds against a statement of an answer, and what a consultant made of it.
CREATE TABLE reason_mark (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL REFERENCES workspace,
    assessment_id   uuid        NOT NULL,
    task_id         uuid        NOT NULL,
    task_title      text        NOT NULL,
    edition_id      uuid        NOT NULL,
    place           text        NOT NULL CHECK (length(place) <= 200),
    said            text        NOT NULL CHECK (length(said) <= 4000),
    rules           text        NOT NULL CHECK (length(rules) <= 20000),
    because         text        NOT NULL CHECK (length(because) BETWEEN 1 AND 2000),
    state           text        NOT NULL CHECK (state IN ('open', 'will change', 'stands')),
    reply           text        NOT NULL CHECK (length(reply) <= 2000),
    created_by      uuid        NOT NULL,
    created_by_name text        NOT NULL,
    created_at      timestamptz NOT NULL,
    changed_by      uuid        NOT NULL,
    changed_by_name text        NOT NULL,
    changed_at      timestamptz NOT NULL,
    version         integer     NOT NULL,
    UNIQUE (workspace_id, id),
    FOREIGN KEY (workspace_id, created_by) REFERENCES account (workspace_id, id),
    FOREIGN KEY (workspace_id, changed_by) REFERENCES account (workspace_id, id)
);
CREATE INDEX reason_mark_workspace ON reason_mark (workspace_id, state, created_at DESC);

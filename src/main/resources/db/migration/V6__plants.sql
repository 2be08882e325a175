-- A plant that stands there or is planned, as it was given.
CREATE TABLE plant (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL REFERENCES workspace,
    name            text        NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    document        text        NOT NULL CHECK (length(document) <= 200000),
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
CREATE INDEX plant_workspace ON plant (workspace_id, changed_at DESC);

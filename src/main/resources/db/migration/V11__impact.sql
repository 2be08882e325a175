-- Tasks answered by two states of a rulebook: what came of it, as JSON, and which changed answers people are to judge.
CREATE TABLE impact_run (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL REFERENCES workspace,
    edition_id   uuid        NOT NULL,
    before_id    uuid        NOT NULL,
    after_hash   text        NOT NULL,
    before_hash  text        NOT NULL,
    document     text        NOT NULL CHECK (length(document) <= 50000000),
    made_by      uuid        NOT NULL,
    made_by_name text        NOT NULL,
    made_at      timestamptz NOT NULL,
    UNIQUE (workspace_id, id),
    FOREIGN KEY (workspace_id, made_by) REFERENCES account (workspace_id, id)
);
CREATE INDEX impact_run_pair ON impact_run (workspace_id, after_hash, before_hash, made_at DESC);

-- Whether a changed answer was meant. It belongs to two states, whoever ran them and however often.
CREATE TABLE impact_judgement (
    id             uuid PRIMARY KEY,
    workspace_id   uuid        NOT NULL REFERENCES workspace,
    after_hash     text        NOT NULL,
    before_hash    text        NOT NULL,
    task_key       text        NOT NULL CHECK (length(task_key) BETWEEN 1 AND 200),
    task_title     text        NOT NULL,
    verdict        text        NOT NULL CHECK (verdict IN ('meant', 'not meant')),
    note           text        NOT NULL CHECK (length(note) <= 2000),
    judged_by      uuid        NOT NULL,
    judged_by_name text        NOT NULL,
    judged_at      timestamptz NOT NULL,
    version        integer     NOT NULL,
    UNIQUE (workspace_id, after_hash, before_hash, task_key),
    FOREIGN KEY (workspace_id, judged_by) REFERENCES account (workspace_id, id)
);

-- What has to be cleaned, as it was given, and the answers to it, byte for byte.
CREATE TABLE cleaning_task (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL REFERENCES workspace,
    title           text        NOT NULL CHECK (length(title) BETWEEN 1 AND 200),
    document        text        NOT NULL CHECK (length(document) <= 1000000),
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
CREATE INDEX cleaning_task_workspace ON cleaning_task (workspace_id, changed_at DESC);

CREATE TABLE assessment (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL,
    task_id         uuid        NOT NULL,
    task_version    integer     NOT NULL,
    edition_id      uuid        NOT NULL,
    request_hash    text        NOT NULL,
    answer          bytea       NOT NULL,
    answer_hash     text        NOT NULL,
    program         text        NOT NULL,
    created_by      uuid        NOT NULL,
    created_by_name text        NOT NULL,
    created_at      timestamptz NOT NULL,
    FOREIGN KEY (workspace_id, task_id) REFERENCES cleaning_task (workspace_id, id),
    FOREIGN KEY (workspace_id, edition_id) REFERENCES edition (workspace_id, id),
    FOREIGN KEY (workspace_id, created_by) REFERENCES account (workspace_id, id),
    CONSTRAINT an_answer_is_its_hash CHECK (encode(sha256(answer), 'hex') = answer_hash)
);
CREATE INDEX assessment_task ON assessment (workspace_id, task_id, created_at DESC);

CREATE FUNCTION refuse_change_of_assessment() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'an answer once given is kept as it is' USING ERRCODE = 'integrity_constraint_violation';
END $$;
CREATE TRIGGER assessment_stands
    BEFORE UPDATE OR DELETE ON assessment
    FOR EACH ROW EXECUTE FUNCTION refuse_change_of_assessment();

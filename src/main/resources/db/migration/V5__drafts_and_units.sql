-- A task form as it was typed, right or wrong, kept for the one who typed it; and the units that each account types in.
CREATE TABLE task_draft (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL,
    account_id   uuid        NOT NULL,
    task_id      uuid,
    task_version integer     NOT NULL,
    title        text        NOT NULL CHECK (length(title) <= 200),
    fields       text        NOT NULL CHECK (length(fields) <= 2000000),
    changed_at   timestamptz NOT NULL,
    FOREIGN KEY (workspace_id, account_id) REFERENCES account (workspace_id, id),
    FOREIGN KEY (workspace_id, task_id) REFERENCES cleaning_task (workspace_id, id)
);
CREATE INDEX task_draft_account ON task_draft (workspace_id, account_id, changed_at DESC);

CREATE TABLE unit_choice (
    workspace_id uuid NOT NULL,
    account_id   uuid NOT NULL,
    attribute    text NOT NULL CHECK (length(attribute) <= 200),
    unit         text NOT NULL CHECK (length(unit) <= 40),
    PRIMARY KEY (account_id, attribute),
    FOREIGN KEY (workspace_id, account_id) REFERENCES account (workspace_id, id)
);

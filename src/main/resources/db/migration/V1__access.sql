-- Who may do what. Every row below a workspace names its workspace, and the composite keys keep an account's sessions
-- and tokens in the account's own workspace.
CREATE TABLE workspace (
    id         uuid PRIMARY KEY,
    name       text        NOT NULL UNIQUE CHECK (name ~ '^[a-z0-9][a-z0-9-]{0,62}$'),
    title      text        NOT NULL,
    created_at timestamptz NOT NULL
);

CREATE TABLE account (
    id            uuid PRIMARY KEY,
    workspace_id  uuid        NOT NULL REFERENCES workspace,
    name          text        NOT NULL,
    password_hash text        NOT NULL,
    roles         text[]      NOT NULL CHECK (cardinality(roles) > 0
        AND roles <@ ARRAY ['CONSULTANT', 'REVIEWER', 'ENGINEER', 'TRAINEE', 'ADMINISTRATOR']),
    demo          boolean     NOT NULL,
    enabled       boolean     NOT NULL,
    created_at    timestamptz NOT NULL,
    UNIQUE (workspace_id, id)
);
-- One sign-in name in the whole installation, whatever its case: the sign-in form asks for no workspace.
CREATE UNIQUE INDEX account_name ON account (lower(name));

CREATE TABLE sign_in_session (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL,
    account_id   uuid        NOT NULL,
    secret_hash  text        NOT NULL UNIQUE,
    created_at   timestamptz NOT NULL,
    last_seen_at timestamptz NOT NULL,
    FOREIGN KEY (workspace_id, account_id) REFERENCES account (workspace_id, id)
);
CREATE INDEX sign_in_session_created ON sign_in_session (created_at);

CREATE TABLE api_token (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL,
    account_id   uuid        NOT NULL,
    label        text        NOT NULL CHECK (length(label) BETWEEN 1 AND 80),
    secret_hash  text        NOT NULL UNIQUE,
    created_at   timestamptz NOT NULL,
    expires_at   timestamptz NOT NULL,
    FOREIGN KEY (workspace_id, account_id) REFERENCES account (workspace_id, id)
);
CREATE INDEX api_token_account ON api_token (workspace_id, account_id);

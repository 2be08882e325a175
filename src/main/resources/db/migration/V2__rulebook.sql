-- The know-how and its numbered states. A released edition never changes: that is held here, below the program.
CREATE TABLE rulebook (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL REFERENCES workspace,
    name         text        NOT NULL CHECK (name ~ '^[a-z][a-z0-9-]{0,59}$'),
    created_at   timestamptz NOT NULL,
    UNIQUE (workspace_id, name),
    UNIQUE (workspace_id, id)
);

CREATE TABLE edition (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL,
    rulebook_id     uuid        NOT NULL,
    state           text        NOT NULL CHECK (state IN ('draft', 'asked for review', 'released')),
    number          integer CHECK (number > 0),
    title           text        NOT NULL,
    text_hash       text        NOT NULL,
    meaning_hash    text,
    errors          integer     NOT NULL,
    warnings        integer     NOT NULL,
    rules           integer     NOT NULL,
    terms           integer     NOT NULL,
    starter         boolean     NOT NULL,
    created_by      uuid,
    created_by_name text        NOT NULL,
    created_at      timestamptz NOT NULL,
    changed_by      uuid,
    changed_by_name text        NOT NULL,
    changed_at      timestamptz NOT NULL,
    asked_by        uuid,
    asked_by_name   text,
    asked_at        timestamptz,
    asked_note      text CHECK (length(asked_note) <= 2000),
    released_by      uuid,
    released_by_name text,
    released_at      timestamptz,
    released_note    text CHECK (length(released_note) <= 2000),
    version         integer     NOT NULL,
    UNIQUE (workspace_id, id),
    UNIQUE (rulebook_id, number),
    FOREIGN KEY (workspace_id, rulebook_id) REFERENCES rulebook (workspace_id, id),
    FOREIGN KEY (workspace_id, created_by) REFERENCES account (workspace_id, id),
    FOREIGN KEY (workspace_id, changed_by) REFERENCES account (workspace_id, id),
    FOREIGN KEY (workspace_id, asked_by) REFERENCES account (workspace_id, id),
    FOREIGN KEY (workspace_id, released_by) REFERENCES account (workspace_id, id),
    CHECK (starter OR (created_by IS NOT NULL AND changed_by IS NOT NULL)),
    CONSTRAINT only_a_clean_edition_goes_on
        CHECK (state = 'draft' OR (errors = 0 AND meaning_hash IS NOT NULL)),
    CONSTRAINT a_release_has_its_number_and_time
        CHECK ((state = 'released') = (number IS NOT NULL) AND (state = 'released') = (released_at IS NOT NULL)),
    CONSTRAINT nobody_releases_what_they_wrote
        CHECK (state <> 'released' OR starter
            OR (released_by IS NOT NULL AND released_by <> created_by AND released_by <> changed_by))
);
CREATE INDEX edition_workspace ON edition (workspace_id, created_at DESC);

CREATE TABLE edition_file (
    edition_id   uuid  NOT NULL,
    workspace_id uuid  NOT NULL,
    path         text  NOT NULL CHECK (length(path) BETWEEN 1 AND 500),
    bytes        bytea NOT NULL,
    PRIMARY KEY (edition_id, path),
    FOREIGN KEY (workspace_id, edition_id) REFERENCES edition (workspace_id, id)
);

CREATE FUNCTION refuse_change_of_released_edition() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF OLD.state = 'released' THEN
        RAISE EXCEPTION 'edition % is released and never changes', OLD.id USING ERRCODE = 'integrity_constraint_violation';
    END IF;
    RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER released_edition_stands
    BEFORE UPDATE OR DELETE ON edition
    FOR EACH ROW EXECUTE FUNCTION refuse_change_of_released_edition();

-- The lock keeps a release and a change of its files from passing each other unseen.
CREATE FUNCTION refuse_change_of_released_files() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
    touched uuid[] := CASE TG_OP
        WHEN 'INSERT' THEN ARRAY [NEW.edition_id]
        WHEN 'DELETE' THEN ARRAY [OLD.edition_id]
        ELSE ARRAY [OLD.edition_id, NEW.edition_id] END;
BEGIN
    PERFORM 1 FROM edition WHERE id = ANY (touched) FOR UPDATE;
    IF EXISTS (SELECT 1 FROM edition WHERE id = ANY (touched) AND state = 'released') THEN
        RAISE EXCEPTION 'the files of a released edition never change' USING ERRCODE = 'integrity_constraint_violation';
    END IF;
    RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER released_files_stand
    BEFORE INSERT OR UPDATE OR DELETE ON edition_file
    FOR EACH ROW EXECUTE FUNCTION refuse_change_of_released_files();

CREATE FUNCTION refuse_emptying() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'editions are not emptied at once' USING ERRCODE = 'integrity_constraint_violation';
END $$;
CREATE TRIGGER editions_are_not_emptied BEFORE TRUNCATE ON edition EXECUTE FUNCTION refuse_emptying();
CREATE TRIGGER edition_files_are_not_emptied BEFORE TRUNCATE ON edition_file EXECUTE FUNCTION refuse_emptying();

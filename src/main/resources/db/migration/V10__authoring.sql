-- Drafts written by several people, texts kept aside, remarks on rules, approval, and withdrawal of a released edition.
ALTER TABLE edition DROP CONSTRAINT edition_state_check;
ALTER TABLE edition ADD CONSTRAINT edition_state_check
    CHECK (state IN ('draft', 'asked for review', 'released', 'withdrawn'));
ALTER TABLE edition
    ADD COLUMN counted           boolean NOT NULL DEFAULT true,
    ADD COLUMN based_on          uuid,
    ADD COLUMN approved_by       uuid,
    ADD COLUMN approved_by_name  text,
    ADD COLUMN approved_at       timestamptz,
    ADD COLUMN approved_note     text CHECK (length(approved_note) <= 2000),
    ADD COLUMN approved_hash     text,
    ADD COLUMN released_despite  text CHECK (length(released_despite) <= 2000),
    ADD COLUMN withdrawn_by      uuid,
    ADD COLUMN withdrawn_by_name text,
    ADD COLUMN withdrawn_at      timestamptz,
    ADD COLUMN withdrawn_reason  text CHECK (length(withdrawn_reason) BETWEEN 1 AND 2000),
    ADD FOREIGN KEY (workspace_id, based_on) REFERENCES edition (workspace_id, id),
    ADD FOREIGN KEY (workspace_id, approved_by) REFERENCES account (workspace_id, id),
    ADD FOREIGN KEY (workspace_id, withdrawn_by) REFERENCES account (workspace_id, id),
    DROP CONSTRAINT only_a_clean_edition_goes_on,
    DROP CONSTRAINT a_release_has_its_number_and_time,
    DROP CONSTRAINT nobody_releases_what_they_wrote,
    ADD CONSTRAINT only_a_clean_edition_goes_on
        CHECK (state = 'draft' OR (counted AND errors = 0 AND meaning_hash IS NOT NULL)),
    ADD CONSTRAINT a_release_has_its_number_and_time
        CHECK ((state IN ('released', 'withdrawn')) = (number IS NOT NULL)
            AND (state IN ('released', 'withdrawn')) = (released_at IS NOT NULL)),
    ADD CONSTRAINT nobody_releases_what_they_wrote
        CHECK (state NOT IN ('released', 'withdrawn') OR starter
            OR (released_by IS NOT NULL AND released_by <> created_by AND released_by <> changed_by)),
    ADD CONSTRAINT an_approval_names_the_files
        CHECK ((approved_at IS NULL) = (approved_hash IS NULL)),
    ADD CONSTRAINT a_withdrawal_has_its_reason
        CHECK ((state = 'withdrawn') = (withdrawn_at IS NOT NULL) AND (state = 'withdrawn') = (withdrawn_reason IS NOT NULL));

-- Everybody who ever gave a draft a file: none of them releases it.
CREATE TABLE edition_writer (
    edition_id   uuid NOT NULL,
    workspace_id uuid NOT NULL,
    account_id   uuid NOT NULL,
    PRIMARY KEY (edition_id, account_id),
    FOREIGN KEY (workspace_id, edition_id) REFERENCES edition (workspace_id, id),
    FOREIGN KEY (workspace_id, account_id) REFERENCES account (workspace_id, id)
);

-- A released edition changes in one way only: it can be withdrawn, and keeps all it said.
CREATE OR REPLACE FUNCTION refuse_change_of_released_edition() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
    may_change text[] := ARRAY['state', 'version', 'withdrawn_by', 'withdrawn_by_name', 'withdrawn_at', 'withdrawn_reason'];
BEGIN
    IF OLD.state IN ('released', 'withdrawn') THEN
        IF TG_OP = 'UPDATE' AND OLD.state = 'released' AND NEW.state = 'withdrawn'
            AND to_jsonb(OLD) - may_change = to_jsonb(NEW) - may_change THEN
            RETURN NEW;
        END IF;
        RAISE EXCEPTION 'edition % is released and never changes', OLD.id USING ERRCODE = 'integrity_constraint_violation';
    END IF;
    IF TG_OP = 'UPDATE' AND NEW.state = 'released' AND NOT NEW.starter
        AND EXISTS (SELECT 1 FROM edition_writer WHERE edition_id = NEW.id AND account_id = NEW.released_by) THEN
        RAISE EXCEPTION 'nobody_releases_what_they_wrote: %', NEW.released_by USING ERRCODE = 'integrity_constraint_violation';
    END IF;
    RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;

CREATE OR REPLACE FUNCTION refuse_change_of_released_files() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
    touched uuid[] := CASE TG_OP
        WHEN 'INSERT' THEN ARRAY [NEW.edition_id]
        WHEN 'DELETE' THEN ARRAY [OLD.edition_id]
        ELSE ARRAY [OLD.edition_id, NEW.edition_id] END;
BEGIN
    PERFORM 1 FROM edition WHERE id = ANY (touched) FOR UPDATE;
    IF EXISTS (SELECT 1 FROM edition WHERE id = ANY (touched) AND state IN ('released', 'withdrawn')) THEN
        RAISE EXCEPTION 'the files of a released edition never change' USING ERRCODE = 'integrity_constraint_violation';
    END IF;
    RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;

-- A text that could not be taken because somebody else had changed the file, or that was deleted: nothing written is lost.
CREATE TABLE kept_aside (
    id           uuid PRIMARY KEY,
    workspace_id uuid        NOT NULL,
    edition_id   uuid        NOT NULL,
    path         text        NOT NULL CHECK (length(path) BETWEEN 1 AND 500),
    bytes        bytea       NOT NULL,
    why          text        NOT NULL CHECK (why IN ('changed meanwhile', 'deleted')),
    kept_by      uuid,
    kept_by_name text        NOT NULL,
    kept_at      timestamptz NOT NULL,
    FOREIGN KEY (workspace_id, edition_id) REFERENCES edition (workspace_id, id),
    FOREIGN KEY (workspace_id, kept_by) REFERENCES account (workspace_id, id)
);
CREATE INDEX kept_aside_edition ON kept_aside (workspace_id, edition_id, kept_at DESC);

-- What reviewers and authors say to each other about a rule of a draft, or about the whole of it (no rule).
CREATE TABLE remark (
    id              uuid PRIMARY KEY,
    workspace_id    uuid        NOT NULL,
    edition_id      uuid        NOT NULL,
    rule            text        NOT NULL CHECK (length(rule) <= 200),
    said            text        NOT NULL CHECK (length(said) BETWEEN 1 AND 4000),
    said_by         uuid        NOT NULL,
    said_by_name    text        NOT NULL,
    said_at         timestamptz NOT NULL,
    settled_by      uuid,
    settled_by_name text,
    settled_at      timestamptz,
    settled_note    text CHECK (length(settled_note) <= 2000),
    version         integer     NOT NULL,
    FOREIGN KEY (workspace_id, edition_id) REFERENCES edition (workspace_id, id),
    FOREIGN KEY (workspace_id, said_by) REFERENCES account (workspace_id, id),
    FOREIGN KEY (workspace_id, settled_by) REFERENCES account (workspace_id, id)
);
CREATE INDEX remark_edition ON remark (workspace_id, edition_id, said_at);

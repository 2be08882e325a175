-- A task that was made by changing another one leads back to it.
ALTER TABLE cleaning_task ADD COLUMN variant_of uuid;
ALTER TABLE cleaning_task ADD CONSTRAINT a_variant_is_of_its_workspace
    FOREIGN KEY (workspace_id, variant_of) REFERENCES cleaning_task (workspace_id, id);
ALTER TABLE cleaning_task ADD CONSTRAINT a_task_is_no_variant_of_itself CHECK (variant_of <> id);
CREATE INDEX cleaning_task_variants ON cleaning_task (workspace_id, variant_of) WHERE variant_of IS NOT NULL;

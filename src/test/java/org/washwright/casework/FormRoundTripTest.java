package org.washwright.casework;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.document.Node;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskDocument;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/** What the form shows of a task is all of the task: opened and saved, it says the same. The task is its own check. */
class FormRoundTripTest {

    private static final int TASKS = 500;

    @Test
    void a_random_task_opened_in_the_form_kept_as_a_draft_and_saved_says_the_same() {
        for (Edition edition : List.of(Starter.edition(), SmallEdition.with(""))) {
            for (int seed = 0; seed < TASKS; seed++) {
                CleaningTask task = new TaskMaker(new Random(seed), edition).task();
                Node document = TaskDocument.of(task, edition.declaredAttributes());
                FormFields fields =
                        FormFields.ofJson(FormReader.read(document, edition).json());
                byte[] saved = FormDocument.write(fields, edition);
                Diagnostics diagnostics = new Diagnostics();
                CleaningTask again = TaskReader.read("form", saved, edition, diagnostics)
                        .orElseThrow(() -> new AssertionError(diagnostics.all().toString()));
                String text = new String(saved, StandardCharsets.UTF_8);
                assertEquals(TaskDocument.said(task), TaskDocument.said(again), "seed " + seed + ": " + text);
            }
        }
    }
}

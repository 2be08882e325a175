package org.washwright.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;

/** Law: what is written reads back as the same task. */
class TaskWriterTest {

    private static final Edition SMALL = SmallEdition.read(SmallEdition.files(SmallEdition.texts()));

    private static CleaningTask read(String file, byte[] bytes, Edition edition) {
        Diagnostics diagnostics = new Diagnostics();
        return TaskReader.read(file, bytes, edition, diagnostics)
                .orElseThrow(
                        () -> new AssertionError(diagnostics.all() + "\n" + new String(bytes, StandardCharsets.UTF_8)));
    }

    private static void same(CleaningTask task, Edition edition) {
        String yaml = TaskWriter.yaml(task, edition, "");
        CleaningTask fromYaml = read("t.yaml", yaml.getBytes(StandardCharsets.UTF_8), edition);
        CleaningTask fromJson = read("t.json", Hashes.canonical(TaskWriter.data(task, edition)), edition);
        for (CleaningTask again : List.of(fromYaml, fromJson)) {
            for (Group group : Group.values()) {
                assertEquals(values(task, group), values(again, group), yaml);
            }
            task.declared()
                    .forEach((id, given) ->
                            assertEquals(given.value(), again.declared().get(id).value(), yaml));
        }
    }

    /** Values alone: pointers and paths tell where they were written. */
    private static String values(CleaningTask task, Group group) {
        StringBuilder out = new StringBuilder();
        CleaningTask.Entries entries = task.entries(group);
        // A single group that says nothing may be left out.
        out.append(group.isList() && entries.open()).append(entries.entries().size());
        for (Entry entry : entries.entries()) {
            out.append('|');
            entry.given()
                    .forEach((name, given) ->
                            out.append(name).append('=').append(given.value()).append(';'));
        }
        return out.toString();
    }

    @Test
    void demo_tasks_come_back_to_the_last_bit() {
        Starter.demoTasks().values().forEach(task -> same(task, Starter.edition()));
    }

    @Test
    void tasks_made_up_at_random_come_back_to_the_last_bit() {
        TaskMaker maker = new TaskMaker(new Random(20261125), SMALL);
        for (int i = 0; i < 300; i++) {
            same(maker.task(), SMALL);
        }
    }

    @Test
    void quantities_are_written_with_as_few_digits_as_they_need() {
        CleaningTask task = Starter.task("title: t\nfeatures: [{kind: thread, diameter: 0.1 mm, depth: 20..30 mm}]\n"
                + "materials: [{substrate: [carbon-steel, brass], hardness: <= 20 HRC}]\n"
                + "demand: {residue: 20 mg/m2, particleCode: A(B-J10)}\nsoils: []\n");
        String yaml = TaskWriter.yaml(task, Starter.edition(), "");
        assertTrue(yaml.contains("{kind: thread, diameter: 0.1 mm, depth: 20..30 mm}"), yaml);
        assertTrue(yaml.contains("hardness: \"<= 20 HRC\""), yaml);
        assertTrue(yaml.contains("residue: 0.02 g/m²"), yaml);
        assertTrue(yaml.contains("soils: []"), yaml);
    }
}

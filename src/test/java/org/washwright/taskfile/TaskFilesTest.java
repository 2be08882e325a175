package org.washwright.taskfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskDocument;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** Whatever is said of a task, each kind of file says it the same. No expected value: the task is its own check. */
class TaskFilesTest {

    private static final int TASKS = 300;

    @ParameterizedTest
    @EnumSource(TaskFormat.class)
    void a_random_task_written_as_a_file_of_each_kind_is_the_same_task_when_read(TaskFormat format) {
        for (Edition edition : List.of(Starter.edition(), SmallEdition.with(""))) {
            TaskExport export = new TaskExport(edition);
            for (int seed = 0; seed < TASKS; seed++) {
                CleaningTask task = new TaskMaker(new Random(seed), edition).task();
                Node document = TaskDocument.of(task, edition.declaredAttributes());
                byte[] file = export.task(document, format);
                assertEquals(
                        TaskDocument.said(task),
                        TaskDocument.said(read(file, format, edition)),
                        () -> "seed in " + format + ": "
                                + new String(export.task(document, TaskFormat.CSV), StandardCharsets.UTF_8));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TaskFormat.class)
    void the_demo_tasks_stay_what_they_are_with_their_words_units_and_question_trees(TaskFormat format)
            throws IOException {
        Edition edition = Starter.edition();
        try (Stream<Path> files = Files.list(Path.of("demo-data/tasks"))) {
            for (Path path : files.sorted().toList()) {
                byte[] bytes = Files.readAllBytes(path);
                Node document =
                        DocumentReader.read("t.yaml", bytes, new Diagnostics()).orElseThrow();
                byte[] file = new TaskExport(edition).task(document, format);
                assertEquals(
                        TaskDocument.said(read(bytes, TaskFormat.YAML, edition)),
                        TaskDocument.said(read(file, format, edition)),
                        path + " as " + format);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TaskFormat.class)
    void rare_forms_survive(TaskFormat format) {
        Edition edition = Starter.edition();
        String yaml = """
                title: "'quoted', =1+1, \\"said\\" # no remark: none"
                notes: "=cmd|' /C calc'!A0\\r\\nsecond line\\n\\n- third, with comma"
                part: unknown
                materials:
                  - unknown
                  - {}
                  - carbon-steel
                  - substrate: [carbon-steel, bearing-steel]
                    hardness: ">= 30 HRC"
                    porous: not applicable
                features: []
                soils:
                  open: yes
                  list:
                    - kind: {tree: what-is-this-soil, answers: [crust, powder]}
                    - kind: {value: cutting-oil, tree: what-is-this-soil, answers: [crust, powder]}
                permittedSolvents: [hydrocarbon, unknown]
                plants: unknown
                intended: {}
                demand:
                  residue: "<= 20 mg/m2"
                  particleCode: A(B-E16/F-G12/H-I4/J-K00)
                attributes:
                  seal-in-place: no
                """;
        Node document = DocumentReader.read("t.yaml", yaml, new Diagnostics()).orElseThrow();
        CleaningTask task = read(yaml.getBytes(StandardCharsets.UTF_8), TaskFormat.YAML, edition);
        byte[] file = new TaskExport(edition).task(document, format);
        assertEquals(
                TaskDocument.said(task),
                TaskDocument.said(read(file, format, edition)),
                new String(file, StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @EnumSource(TaskFormat.class)
    void a_template_with_a_title_and_nothing_else_says_nothing_more_than_the_title(TaskFormat format)
            throws IOException {
        Edition edition = Starter.edition();
        byte[] template = new TaskExport(edition).template(format);
        byte[] titled = format == TaskFormat.XLSX
                ? new WorkbookWriter(new TaskForms(edition)).write(Map.of("title", "Mine"))
                : new String(template, StandardCharsets.UTF_8)
                        .replace("title: \"\"", "title: Mine")
                        .replace("\"title\":\"\"", "\"title\":\"Mine\"")
                        .replace("title,,", "title,Mine,")
                        .getBytes(StandardCharsets.UTF_8);
        CleaningTask nothing = read("title: Mine".getBytes(StandardCharsets.UTF_8), TaskFormat.YAML, edition);
        Map<String, Object> expected = TaskDocument.said(nothing);
        Map<String, Object> found = TaskDocument.said(read(titled, format, edition));
        if (format == TaskFormat.JSON) {
            // JSON has no remarks: the template says of the intended process outright that there is none.
            found.keySet().removeIf(k -> k.startsWith("intended"));
            expected.keySet().removeIf(k -> k.startsWith("intended"));
        }
        assertEquals(expected, found);
    }

    @Test
    void every_line_of_the_yaml_template_can_be_taken_in() {
        Edition edition = Starter.edition();
        String template = new String(new TaskExport(edition).template(TaskFormat.YAML), StandardCharsets.UTF_8)
                .replace("title: \"\"", "title: Mine")
                .replaceAll("(?m)^#(?! )", "")
                .replaceAll("(?m)^#(?=  )", "");
        CleaningTask task = read(template.getBytes(StandardCharsets.UTF_8), TaskFormat.YAML, edition);
        assertEquals(
                1, task.entries(org.washwright.task.Group.MATERIALS).entries().size());
        assertTrue(task.declared()
                .keySet()
                .containsAll(edition.declaredAttributes().keySet()));
    }

    @Test
    void a_table_of_several_tasks_gives_each_or_none() {
        Edition edition = Starter.edition();
        String table = "title,part/mass,soils/0/kind\nA,12 g,cutting-oil\nB,1 kg,\n";
        Diagnostics diagnostics = new Diagnostics();
        assertEquals(
                List.of("A", "B"),
                TaskFile.read("t.csv", table.getBytes(StandardCharsets.UTF_8), TaskFormat.CSV, edition, diagnostics)
                        .stream()
                        .map(t -> t.task().title())
                        .toList());
        String wrong = table.replace("1 kg", "heavy");
        assertEquals(
                List.of(),
                TaskFile.read("t.csv", wrong.getBytes(StandardCharsets.UTF_8), TaskFormat.CSV, edition, diagnostics));
        assertEquals("t.csv:3:2 (/part/mass)", diagnostics.all().get(0).place().toString());
    }

    private static CleaningTask read(byte[] file, TaskFormat format, Edition edition) {
        Diagnostics diagnostics = new Diagnostics();
        List<TaskFile.Read> tasks = TaskFile.read("task", file, format, edition, diagnostics);
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all() + new String(file, StandardCharsets.UTF_8));
        assertEquals(1, tasks.size());
        return tasks.get(0).task();
    }
}

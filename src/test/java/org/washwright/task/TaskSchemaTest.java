package org.washwright.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;

class TaskSchemaTest {
    private static final Path WRITTEN = Path.of("docs/task.schema.json");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Edition EDITION = edition();
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(JSON.valueToTree(TaskSchema.of(EDITION)).toString());

    private static Edition edition() {
        try {
            return new EditionReader(new DrlReader())
                    .read(EditionFiles.ofFolder(Path.of("rules/starter"), new Diagnostics()))
                    .edition()
                    .orElseThrow();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Stream<Path> demoTasks() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/tasks"))) {
            return files.sorted().toList().stream();
        }
    }

    /** Run once with -Dwashwright.write=true to write the file anew after a change of the starter rulebook. */
    @Test
    void the_schema_in_the_docs_is_that_of_the_starter_rulebook() throws IOException {
        String text = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(TaskSchema.of(EDITION)) + "\n";
        if (Boolean.getBoolean("washwright.write")) {
            Files.writeString(WRITTEN, text);
        }
        assertEquals(text, Files.readString(WRITTEN, StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void every_demo_task_fits(Path file) throws IOException {
        JsonNode task = JSON.valueToTree(plain(DocumentReader.read("task", Files.readAllBytes(file), new Diagnostics())
                .orElseThrow()));
        assertEquals(List.of(), List.copyOf(SCHEMA.validate(task)), task.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "[]",
                "{\"title\":\"\"}",
                "{\"title\":\"x\",\"colour\":\"red\"}",
                "{\"title\":\"x\",\"part\":{\"mass\":3}}",
                "{\"title\":\"x\",\"part\":{\"mass\":\"heavy\"}}",
                "{\"title\":\"x\",\"materials\":[{\"substrate\":\"unobtainium\"}]}",
                "{\"title\":\"x\",\"materials\":[{\"porous\":\"perhaps\"}]}",
                "{\"title\":\"x\",\"soils\":{\"open\":true,\"lists\":[]}}",
                "{\"title\":\"x\",\"soils\":[{\"kind\":{\"tree\":\"no-such-tree\",\"answers\":[]}}]}",
                "{\"title\":\"x\",\"attributes\":{\"no-such\":\"yes\"}}"
            })
    void a_bad_task_does_not_fit(String task) throws IOException {
        assertFalse(SCHEMA.validate(JSON.readTree(task)).isEmpty(), task);
    }

    @Test
    void too_many_entries_do_not_fit() throws IOException {
        String soils = String.join(",", java.util.Collections.nCopies(21, "{}"));
        assertFalse(SCHEMA.validate(JSON.readTree("{\"title\":\"x\",\"soils\":[" + soils + "]}"))
                .isEmpty());
    }

    private static Object plain(Node node) {
        if (node instanceof Node.MapNode map) {
            Map<String, Object> out = new java.util.LinkedHashMap<>();
            map.entries().forEach(e -> out.put(e.key(), plain(e.value())));
            return out;
        }
        return node instanceof Node.ListNode list
                ? list.items().stream().map(TaskSchemaTest::plain).toList()
                : node.shown();
    }
}

package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.washwright.generate.SmallEdition;

/**
 * What commands write for build servers: SARIF is held against its published schema, JUnit XML is read back by the parser of
 * the Java platform.
 */
class FormatsTest {

    private static final String CASES = """
            cases:
              - id: rusty
                title: What rusts <&"> must be warned of
                task: {title: t, part: {mass: 100 g}, materials: [{substrate: substrate-a}]}
                expect: {fires: [S-01]}
            """;

    @TempDir
    private Path folder;

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    private int run(Object... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        String[] texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = arguments[i].toString();
        }
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(texts);
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = SmallEdition.withFewRules();
        texts.put("cases/c.yaml", CASES);
        return texts;
    }

    private Path edition(String name, Map<String, String> texts) throws IOException {
        Path root = folder.resolve(name);
        for (Map.Entry<String, String> file : texts.entrySet()) {
            Path path = root.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
        return root;
    }

    private Path edited(String name, String file, String was, String is) throws IOException {
        Map<String, String> texts = new TreeMap<>(texts());
        assertTrue(texts.get(file).contains(was));
        texts.put(file, texts.get(file).replace(was, is));
        return edition(name, texts);
    }

    /** The log just written, after it was held against the schema. */
    private JsonNode sarif() throws IOException {
        JsonNode log = new ObjectMapper().readTree(out.toString());
        try (InputStream in = FormatsTest.class.getResourceAsStream("/sarif/sarif-schema-2.1.0-rtm.5.json")) {
            JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4)
                    .getSchema(new ObjectMapper().readTree(in));
            Set<ValidationMessage> wrong = schema.validate(log);
            assertEquals(Set.of(), wrong);
            // The schema notices what is no log at all: a level that SARIF does not have.
            JsonNode broken = new ObjectMapper()
                    .readTree("{\"version\":\"2.1.0\",\"runs\":[{\"tool\":{\"driver\":{\"name\":\"x\"}},"
                            + "\"results\":[{\"message\":{\"text\":\"x\"},\"level\":\"bad\"}]}]}");
            assertFalse(schema.validate(broken).isEmpty());
        }
        assertEquals("Washwright", log.at("/runs/0/tool/driver/name").asText());
        for (JsonNode result : log.at("/runs/0/results")) {
            // Section 3.27.6 of the standard: the index leads to the rule of that id.
            assertEquals(
                    result.at("/ruleId").asText(),
                    log.at("/runs/0/tool/driver/rules/"
                                    + result.at("/ruleIndex").asInt() + "/id")
                            .asText());
        }
        return log.at("/runs/0/results");
    }

    private Element junit() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document document = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(out.toString().getBytes(StandardCharsets.UTF_8)));
        Element suite = document.getDocumentElement();
        assertEquals("testsuite", suite.getTagName());
        assertEquals(suite.getElementsByTagName("testcase").getLength(), Integer.parseInt(suite.getAttribute("tests")));
        assertEquals(
                suite.getElementsByTagName("failure").getLength(), Integer.parseInt(suite.getAttribute("failures")));
        return suite;
    }

    @Test
    void errors_of_an_edition_are_placed_in_the_repository_by_file_line_and_column() throws Exception {
        Path broken = edited("broken", "rules/all.drl", "hazard-a", "hazard-z");
        assertEquals(ExitCode.FINDINGS, run("check", "--format", "sarif", broken));
        JsonNode results = sarif();
        assertEquals("unknown-reference", results.at("/0/ruleId").asText(), results.toString());
        assertEquals("error", results.at("/0/level").asText());
        JsonNode place = results.at("/0/locations/0/physicalLocation");
        assertTrue(place.at("/artifactLocation/uri").asText().endsWith("broken/rules/all.drl"), place.toString());
        // The hazard stands in the second line of the rules.
        assertEquals(2, place.at("/region/startLine").asInt());
        assertTrue(place.at("/region/startColumn").asInt() > 0);
        assertTrue(results.at("/0/message/text").asText().contains("hazard-z"));
        assertEquals(ExitCode.FINDINGS, run("check", "--format", "junit", broken));
        Element suite = junit();
        assertEquals("1", suite.getAttribute("failures"));
        Element failed = (Element) suite.getElementsByTagName("failure").item(0).getParentNode();
        assertEquals("rules/all.drl", failed.getAttribute("name"));
    }

    @Test
    void a_sound_edition_gives_an_empty_log_and_a_test_for_each_file() throws Exception {
        Path sound = edition("sound", texts());
        assertEquals(ExitCode.OK, run("check", "--format", "sarif", sound));
        assertEquals(0, sarif().size());
        assertEquals(ExitCode.OK, run("check", "--format", "junit", sound));
        assertEquals(String.valueOf(texts().size()), junit().getAttribute("tests"));
        assertEquals(ExitCode.OK, run("check", "--format", "json", sound));
        String json = out.toString();
        assertEquals(ExitCode.OK, run("check", "--json", sound));
        assertEquals(json, out.toString());
        assertEquals(ExitCode.USAGE, run("check", "--json", "--format", "junit", sound));
        assertEquals(ExitCode.USAGE, run("check", "--format", "xml", sound));
        assertTrue(err.toString().contains("text, json, sarif, junit"), err.toString());
        assertEquals(ExitCode.USAGE, run("compare", "--format", "junit", sound, sound));
    }

    @Test
    void a_case_that_fails_is_placed_where_it_expects() throws Exception {
        Path failing = edited("failing", "rules/all.drl", "rusts == true", "rusts == false");
        assertEquals(ExitCode.FINDINGS, run("cases", "--format", "sarif", failing));
        JsonNode results = sarif();
        assertEquals(1, results.size());
        assertEquals("case-not-met", results.at("/0/ruleId").asText());
        assertEquals(
                5,
                results.at("/0/locations/0/physicalLocation/region/startLine").asInt());
        assertEquals(ExitCode.FINDINGS, run("cases", "--format", "junit", failing));
        Element test = (Element) junit().getElementsByTagName("testcase").item(0);
        assertEquals("rusty What rusts <&\"> must be warned of", test.getAttribute("name"));
    }

    @Test
    void an_impact_is_noted_at_the_rule_that_has_it_and_a_case_that_turned_is_an_error() throws Exception {
        Path before = edition("before", texts());
        Path after = edited("after", "rules/all.drl", "rusts == true", "rusts == false");
        Path task = Files.writeString(
                folder.resolve("a task.yaml"), "title: clips\nmaterials: [{substrate: substrate-b}]\n");
        assertEquals(ExitCode.FINDINGS, run("impact", "--format", "sarif", before, after, task));
        JsonNode results = sarif();
        List<String> ids = results.findValuesAsText("ruleId");
        assertEquals(List.of("case-turned", "answer-changes", "answer-changes"), ids);
        JsonNode change = results.at("/1/locations/0/physicalLocation");
        assertTrue(change.at("/artifactLocation/uri").asText().endsWith("after/rules/all.drl"), change.toString());
        assertEquals(1, change.at("/region/startLine").asInt());
        assertEquals("warning", results.at("/1/level").asText());
        assertEquals(ExitCode.FINDINGS, run("impact", "--format", "junit", before, after, task));
        assertEquals("1", junit().getAttribute("failures"));
        run("impact", "--format", "junit", "--unchanged", before, after, task);
        NodeList failures = junit().getElementsByTagName("failure");
        assertEquals(3, failures.getLength());
        assertEquals(ExitCode.FINDINGS, run("impact", before, after, task));
        assertTrue(out.toString().contains("by rule [S-01] soft"), out.toString());
    }

    @Test
    void a_change_that_breaks_nothing_is_fine_and_says_which_part_does_nothing() throws Exception {
        Path before = edition("before", texts());
        Path after = edited("after", "rules/all.drl", "1 kg", "2 kg");
        assertEquals(ExitCode.OK, run("impact", before, after));
        assertTrue(out.toString().contains("[S-02] heavy, changed: touches no task tried"), out.toString());
        assertEquals(ExitCode.OK, run("impact", "--format", "sarif", before, after));
        assertEquals("note", sarif().at("/0/level").asText());
        assertEquals(ExitCode.UNREADABLE_INPUT, run("impact", before, after, folder.resolve("no-such")));
        assertTrue(err.toString().contains("no-such"), err.toString());
        assertEquals(ExitCode.UNREADABLE_INPUT, run("impact", before, folder.resolve("none.zip")));
        Path nonsense = Files.writeString(folder.resolve("nonsense.yaml"), "title: x\nno-such-thing: 1\n");
        assertEquals(ExitCode.OK, run("impact", before, after, nonsense), "refused by both is told and breaks nothing");
        assertTrue(out.toString().contains("refused by both"), out.toString());
    }

    @Test
    void two_editions_are_compared_by_meaning_and_an_edition_with_a_task_is_refused() throws Exception {
        Path before = edition("before", texts());
        Path after = edited("after", "rules/all.drl", "1 kg", "2 kg");
        assertEquals(ExitCode.OK, run("compare", before, after));
        assertTrue(out.toString().startsWith("Answers may change: 1 rule changed.\n"), out.toString());
        assertTrue(
                out.toString().contains("- condition: part: mass of one part is at least 1000 g")
                        || out.toString().contains("- condition: the mass"),
                out.toString());
        assertEquals(ExitCode.OK, run("compare", "--format", "json", before, after));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals("S-02", json.at("/differences/0/id").asText());
        assertEquals("changed", json.at("/differences/0/what").asText());
        assertEquals(ExitCode.USAGE, run("compare", before, "demo-data/tasks/steel-clips.yaml"));
    }

    @Test
    void an_edition_goes_from_folder_to_bundle_and_back_byte_for_byte() throws Exception {
        Path source = edition("source", texts());
        Path zip = folder.resolve("bundle.zip");
        assertEquals(ExitCode.OK, run("export", source, zip));
        String hashes = out.toString().replaceFirst(".*\n", "");
        assertTrue(hashes.contains(SmallEdition.files(texts()).textHash()), hashes);
        Path back = folder.resolve("back");
        assertEquals(ExitCode.OK, run("export", zip, back));
        assertEquals(hashes, out.toString().replaceFirst(".*\n", ""));
        for (String file : texts().keySet()) {
            assertArrayEquals(Files.readAllBytes(source.resolve(file)), Files.readAllBytes(back.resolve(file)), file);
        }
        assertEquals(ExitCode.CANNOT_WRITE, run("export", source, zip), "nothing is written over");
        assertEquals(ExitCode.CANNOT_WRITE, run("export", source, back));
        Files.writeString(source.resolve("rules/stray.txt"), "x");
        assertEquals(ExitCode.UNREADABLE_INPUT, run("export", source, folder.resolve("other.zip")));
        assertTrue(err.toString().contains("stray.txt"), err.toString());
        Path broken = edited("broken", "rules/all.drl", "hazard-a", "hazard-z");
        assertEquals(ExitCode.FINDINGS, run("export", broken, folder.resolve("broken.zip")));
        assertTrue(Files.exists(folder.resolve("broken.zip")), "an edition with errors is copied all the same");
    }
}

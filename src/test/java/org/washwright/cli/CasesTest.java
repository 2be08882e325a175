package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.washwright.generate.Starter;

class CasesTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... arguments) {
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    /** The starter rulebook with one more file of cases. */
    private Path with(String cases) throws IOException {
        var files = new java.util.TreeMap<>(Starter.files().files());
        files.put("cases/more.yaml", cases.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        Path zip = folder.resolve("edition.zip");
        Files.write(zip, new org.washwright.exchange.EditionFiles(files).toZip());
        return zip;
    }

    private static final String FAILING = """
            cases:
              - id: wrong
                title: <Acid> & "glass"
                task: {title: t, permittedSolvents: []}
                expect: {proposes: [hydrocarbon-vacuum]}
            """;

    @Test
    void the_cases_of_the_starter_hold_and_are_written_as_json() throws IOException {
        assertEquals(ExitCode.OK, run("cases", "--json", "--as-of", "2026-11-25"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals(0, json.get("fail").asInt());
        assertEquals(json.get("hold").asInt(), json.get("cases").size());
    }

    @Test
    void a_failing_case_says_what_was_found_and_sets_the_exit_code() throws Exception {
        Path edition = with(FAILING);
        Path junit = folder.resolve("junit.xml");
        assertEquals(
                ExitCode.FINDINGS, run("cases", edition.toString(), "--case", "wrong", "--junit", junit.toString()));
        assertTrue(out.toString().contains("FAILS  wrong"), out::toString);
        assertTrue(out.toString().contains("ruled out: The site has no permit"), out::toString);
        assertTrue(out.toString().contains("cases/more.yaml:2:5"), out::toString);
        Document xml = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(junit.toFile());
        assertEquals("1", xml.getDocumentElement().getAttribute("failures"));
        assertTrue(xml.getElementsByTagName("testcase")
                .item(0)
                .getAttributes()
                .getNamedItem("name")
                .getNodeValue()
                .contains("<Acid> & \"glass\""));
    }

    @Test
    void a_case_that_is_not_there_is_named_with_what_is_near() {
        assertEquals(ExitCode.UNREADABLE_INPUT, run("cases", "--case", "very-hard-steal"));
        assertTrue(err.toString().contains("did you mean \"very-hard-steel\"?"), err::toString);
    }

    @Test
    void a_broken_edition_is_refused_with_all_its_errors() throws IOException {
        assertEquals(
                ExitCode.UNREADABLE_INPUT,
                run("cases", with("cases: [{id: a}, {id: b}]\n").toString()));
        assertTrue(err.toString().contains("the case \"a\" expects nothing"), err::toString);
        assertTrue(err.toString().contains("the case \"b\" expects nothing"), err::toString);
    }
}

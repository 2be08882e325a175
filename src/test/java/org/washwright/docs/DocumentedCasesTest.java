package org.washwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.washwright.cases.CaseResult;
import org.washwright.cases.CaseRunner;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.Starter;

/** The cases in the docs are read and run, and say what the docs say they say. */
class DocumentedCasesTest {

    private static String block(String fence) throws IOException {
        Matcher matcher = Pattern.compile("```" + fence + "\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs", "cases-and-coverage.md")));
        assertTrue(matcher.find());
        return matcher.group(1);
    }

    @Test
    void the_documented_cases_give_the_documented_words() throws IOException {
        Map<String, byte[]> files = new TreeMap<>(Starter.files().files());
        files.put("cases/documented.yaml", block("yaml").getBytes(StandardCharsets.UTF_8));
        EditionReader.Result read = new EditionReader(new DrlReader()).read(new EditionFiles(files));
        assertTrue(read.edition().isPresent(), () -> read.diagnostics().all().toString());
        StringBuilder said = new StringBuilder();
        new CaseRunner(Starter.swept(), "2026-11-25")
                .run(read.checks().cases().stream()
                        .filter(c -> c.place().file().equals("cases/documented.yaml"))
                        .toList())
                .forEach(r -> said.append(told(r)));
        assertEquals(block("text"), said.toString());
    }

    private static String told(CaseResult r) {
        StringBuilder out = new StringBuilder((r.holds() ? "holds  " : "FAILS  ")
                + r.reference().id() + "  " + r.reference().title() + "\n");
        r.unmet()
                .forEach(c -> out.append("       expected: ")
                        .append(c.expected())
                        .append("\n       found:    ")
                        .append(c.found())
                        .append('\n'));
        return out.toString();
    }
}

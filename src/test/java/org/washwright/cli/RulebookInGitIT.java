package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;

/** The script of the docs, run by the shell in a repository, with the packaged program. */
class RulebookInGitIT {

    private static final String CASES =
            "cases:\n  - id: rusty\n    title: What rusts\n    task: {title: t, part: {mass: 100 g},"
                    + " materials: [{substrate: substrate-a}]}\n    expect: {fires: [S-01]}\n";

    @TempDir
    private Path folder;

    private String said = "";

    @Test
    void a_change_that_breaks_nothing_passes_and_one_that_breaks_a_case_fails_with_its_reports() throws Exception {
        write(SmallEdition.withFewRules());
        Files.createDirectories(folder.resolve("tasks"));
        Files.writeString(
                folder.resolve("tasks/clips.yaml"),
                "title: clips\npart: {mass: 2 kg}\nmaterials: [{substrate: substrate-b}]\n");
        git("init", "--quiet");
        git("add", ".");
        git("-c", "user.name=a", "-c", "user.email=a@example.org", "commit", "--quiet", "-m", "first");
        Files.writeString(folder.resolve("check-rulebook.sh"), script());

        write(edited("1 kg", "3 kg"));
        assertEquals(0, run("sh", "check-rulebook.sh"), () -> said);
        assertTrue(said.contains("Answers may change: 1 rule changed."), said);
        assertTrue(said.contains("1 of 2 tried changes"), said);
        assertEquals("warning", level("impact.sarif"));
        assertEquals(0, failures("check.xml") + failures("cases.xml") + failures("impact.xml"));

        write(edited("rusts == true", "rusts == false"));
        assertEquals(1, run("sh", "check-rulebook.sh"), () -> said);
        assertEquals("error", level("cases.sarif"));
        assertEquals("error", level("impact.sarif"));
        assertEquals(1, failures("cases.xml"));
        assertEquals(1, failures("impact.xml"));

        write(edited("hazard-a", "hazard-z"));
        assertEquals(1, run("sh", "check-rulebook.sh"), () -> said);
        assertTrue(said.contains("hazard-z"), said);
        assertEquals("error", level("check.sarif"));
    }

    @Test
    void the_docs_show_what_compare_and_impact_write_of_the_starter_rulebook() throws Exception {
        Map<String, byte[]> files = new TreeMap<>(Starter.files().files());
        files.keySet().removeIf(name -> name.startsWith("cases/"));
        copy("before", files);
        String rules = "rules/material/materials.drl";
        String text = new String(files.get(rules), StandardCharsets.UTF_8);
        int rule = text.indexOf("@id(\"MA-06\")");
        String drawn = text.substring(0, rule) + text.substring(rule).replaceFirst("40 HRC(?=\"\\))", "30 HRC");
        files.put(rules, drawn.getBytes(StandardCharsets.UTF_8));
        copy("draft", files);
        String docs = Files.readString(Path.of("docs/comparing-editions.md"));
        Matcher example = Pattern.compile("\\$ washwright ([^\\n]+)\\n(.*?)```", Pattern.DOTALL)
                .matcher(docs);
        int examples = 0;
        while (example.find()) {
            examples++;
            String[] arguments = example.group(1).split(" ");
            for (int i = 0; i < arguments.length; i++) {
                if (arguments[i].equals("before") || arguments[i].equals("draft")) {
                    arguments[i] = folder.resolve(arguments[i]).toString();
                }
            }
            StringWriter out = new StringWriter();
            CommandLineEntry.commandLine().setOut(new PrintWriter(out)).execute(arguments);
            int at = 0;
            for (String line : example.group(2).split("\n")) {
                // Three dots stand for lines left out.
                if (!line.strip().equals("...")) {
                    int found = out.toString().indexOf(line + "\n", at);
                    assertTrue(found >= 0, line + " comes next in " + out);
                    at = found;
                }
            }
        }
        assertEquals(2, examples);
    }

    private void copy(String name, Map<String, byte[]> files) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(name).resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    private static String script() throws IOException {
        Matcher script = Pattern.compile("```sh\n(#!/bin/sh\n.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs/rulebook-in-git.md")));
        assertTrue(script.find(), "the docs show a script");
        return script.group(1);
    }

    private static Map<String, String> edited(String was, String is) {
        Map<String, String> texts = new TreeMap<>(SmallEdition.withFewRules());
        texts.put("rules/all.drl", texts.get("rules/all.drl").replace(was, is));
        return texts;
    }

    private void write(Map<String, String> texts) throws IOException {
        Map<String, String> all = new TreeMap<>(texts);
        all.put("cases/c.yaml", CASES);
        for (Map.Entry<String, String> file : all.entrySet()) {
            Path path = folder.resolve("rulebook").resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
    }

    private String level(String file) throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve("build").resolve(file).toFile())
                .at("/runs/0/results/0/level")
                .asText();
    }

    private int failures(String file) throws Exception {
        return Integer.parseInt(DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(folder.resolve("build").resolve(file).toFile())
                .getDocumentElement()
                .getAttribute("failures"));
    }

    private void git(String... arguments) throws Exception {
        String[] all = new String[arguments.length + 1];
        all[0] = "git";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        assertEquals(0, run(all), () -> said);
    }

    private int run(String... command) throws Exception {
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
        builder.environment()
                .put(
                        "WASHWRIGHT",
                        Path.of("target/quarkus-app/washwright")
                                .toAbsolutePath()
                                .toString());
        builder.environment().put("BASE", "HEAD");
        Process process = builder.start();
        said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return process.waitFor();
    }
}

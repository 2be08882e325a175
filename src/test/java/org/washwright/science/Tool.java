package org.washwright.science;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs a program of the system that Washwright shares nothing with; a missing one is a failure, not a reason to skip. */
final class Tool {

    private static final String ADVICE =
            "; install the Debian packages units, python3-iapws, python3-pint and python3-scipy, or run .ci/run, which does";

    private Tool() {}

    /** What GNU Units makes of an amount, in another unit. */
    static double units(String from, String to) {
        List<String> lines = run("", "/usr/bin/units", "--terse", "--output-format", "%.17g", from, to);
        return Double.parseDouble(lines.get(0));
    }

    /** Answers of the Python script beside this class, one to each request. */
    static List<Double> python(List<String> requests) {
        List<String> lines = run(
                String.join("\n", requests) + "\n",
                "/usr/bin/python3",
                "src/test/resources/org/washwright/science/independent.py");
        if (lines.size() != requests.size()) {
            throw new AssertionError(requests.size() + " requests had " + lines.size() + " answers");
        }
        return lines.stream().map(Double::valueOf).toList();
    }

    private static List<String> run(String input, String... command) {
        if (!Files.isExecutable(Path.of(command[0]))) {
            throw new AssertionError(command[0] + " is missing" + ADVICE);
        }
        List<String> line = new ArrayList<>();
        Collections.addAll(line, command);
        try {
            Path answers = Files.createTempFile("washwright-tool", ".out");
            Path errors = Files.createTempFile("washwright-tool", ".err");
            Path questions = Files.createTempFile("washwright-tool", ".in");
            try {
                Files.writeString(questions, input);
                ProcessBuilder builder = new ProcessBuilder(line)
                        .redirectInput(questions.toFile())
                        .redirectOutput(answers.toFile())
                        .redirectError(errors.toFile());
                builder.environment().put("LC_ALL", "C.UTF-8");
                Process process = builder.start();
                if (!process.waitFor(120, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                    throw new AssertionError(line + " did not end within two minutes");
                }
                List<String> said = Files.readAllLines(answers, StandardCharsets.UTF_8);
                if (process.exitValue() != 0) {
                    throw new AssertionError(line + " ended with " + process.exitValue() + ", saying " + said + " and "
                            + Files.readString(errors) + ADVICE);
                }
                return said;
            } finally {
                Files.deleteIfExists(answers);
                Files.deleteIfExists(errors);
                Files.deleteIfExists(questions);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(line + " was interrupted", e);
        }
    }
}

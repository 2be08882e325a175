package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.document.Hashes;
import org.washwright.generate.Defaults;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;

/**
 * Compiling generates code; a locale with another idea of the letter i or of digits must not leak into it. The rules are
 * compiled in a Java of its own: what the libraries work out once when they are loaded would otherwise hide the locale here,
 * or leave it behind for other tests.
 */
@Tag("slow")
class CompiledElsewhereIT {

    @Test
    void rulesCompiledUnderATurkishLocaleGiveTheSameBytes() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.language=tr",
                        "-Duser.country=TR",
                        "-Duser.timezone=Pacific/Kiritimati",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        There.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        assertEquals(hashes(Starter.interpreted()), said.lines().toList());
    }

    private static List<String> hashes(Assessor assessor) {
        return Starter.demoTasks().entrySet().stream()
                .map(e -> e.getKey() + " "
                        + Hashes.sha256(
                                assessor.assess(e.getValue(), Starter.WISHES).bytes()))
                .collect(Collectors.toList());
    }

    /** What runs over there: compiles as a Turk would, asks as an Egyptian would. */
    static final class There {

        private There() {}

        /** Prints the hash of each demo task's answer. */
        public static void main(String[] args) {
            Assessor compiled = Assessor.of(SmallEdition.read(Starter.files()), DroolsInference.factory());
            Defaults.under("ar-EG-u-nu-arab", "Pacific/Kiritimati", () -> hashes(compiled))
                    .forEach(System.out::println);
        }
    }
}

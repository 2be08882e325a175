package org.washwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.assessment.Assessor;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.exchange.EditionFiles;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** The example of the docs compiles, runs and is the one that is shown. */
class LibraryExampleTest {

    private static final Path SOURCE = Path.of("src/test/java/org/washwright/docs/LibraryExample.java");
    private static final String PACKAGE = "package org.washwright.docs;\n\n";

    @TempDir
    private Path folder;

    @Test
    void the_docs_show_the_source_as_it_is_below_its_package() throws Exception {
        String source = Files.readString(SOURCE);
        assertTrue(source.startsWith(PACKAGE));
        Matcher shown = Pattern.compile("```java\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs/bulk-and-library.md")));
        assertTrue(shown.find());
        assertEquals(source.substring(PACKAGE.length()), shown.group(1));
    }

    @Test
    void both_ways_give_the_hash_of_the_assessor_in_the_order_of_the_tasks() throws Exception {
        List<String> tasks = IntStream.range(0, 20)
                .mapToObj(i -> i == 13
                        ? "{}"
                        : "{\"title\": \"t" + i + "\", \"part\": {\"mass\": \"" + (i + 1) * 80 + " g\"}}")
                .toList();
        Path input = Files.write(folder.resolve("tasks.ndjson"), tasks);
        // Few rules: the example shows how tasks go in and answers come out.
        EditionFiles files = SmallEdition.files(SmallEdition.withFewRules());
        Edition edition = SmallEdition.read(files);
        Assessor assessor = Assessor.of(edition, ReferenceInterpreter.factory());
        Path bundle = Files.write(folder.resolve("few.zip"), files.toZip());

        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LibraryExample.report(bundle, input, new PrintStream(out, true, StandardCharsets.UTF_8));
        List<String> rows = out.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals(tasks.size(), rows.size());
        for (int i = 0; i < tasks.size(); i++) {
            String start = i == 13
                    ? "refused\t"
                    : "t" + i + "\t"
                            + assessor.assess(Starter.task(edition, tasks.get(i)), Starter.WISHES)
                                    .hash()
                            + "\t";
            assertTrue(rows.get(i).startsWith(start), rows.get(i));
        }

        List<String> again = new ArrayList<>();
        LibraryExample.partitions(bundle)
                .apply(tasks.iterator())
                .forEachRemaining(e -> again.add(LibraryExample.row(e)));
        assertEquals(rows, again);
    }
}

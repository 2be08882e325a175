package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.RuleText;

/** The know-how stands in the rulebook, and there in properties rather than in names. */
class StarterRulebookTest {

    private static final Edition EDITION = Starter.edition();
    /** Names of the keys of catalogue files that happen to be ids too: the scale of a parameter, the scale on hot steel. */
    private static final Set<String> KEYS = Set.of("scale");

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

    @Test
    void at_most_a_fifth_of_its_rules_name_a_single_process() {
        List<String> leaves =
                EDITION.catalogue().leaves().stream().map(l -> l.id()).toList();
        long single = EDITION.rules().stream()
                .filter(r -> leaves.stream().anyMatch(id -> RuleText.readable(r).contains("\"" + id + "\"")))
                .count();
        assertTrue(single > 0 && single * 5 <= EDITION.rules().size(), single + " rules");
    }

    @Test
    void the_program_knows_no_soil_no_substrate_and_no_process() throws IOException {
        Set<String> ids = new TreeSet<>();
        EDITION.catalogue().leaves().forEach(leaf -> ids.add(leaf.id()));
        for (String kind : List.of("soil", "substrate")) {
            ids.addAll(EDITION.terms(kind));
        }
        ids.removeAll(KEYS);
        assertTrue(ids.size() > 100, () -> ids.size() + " ids");
        List<String> found = new ArrayList<>();
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
            for (Path source :
                    sources.filter(p -> p.toString().endsWith(".java")).toList()) {
                Matcher literal = LITERAL.matcher(Files.readString(source));
                while (literal.find()) {
                    if (ids.contains(literal.group(1))) {
                        found.add(source + ": " + literal.group());
                    }
                }
            }
        }
        assertEquals(List.of(), found);
    }
}

package org.washwright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The catalogue of messages is complete: each has a text, an advice, places that can be filled, and somebody who says it. */
class MessageTest {

    private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)}");

    @ParameterizedTest
    @EnumSource(Message.class)
    void everyMessageHasTextAndAdvice(Message message) {
        assertFalse(message.text().isBlank());
        assertFalse(message.advice().isBlank());
        assertTrue(message.code().matches("[a-z0-9]+(-[a-z0-9]+)*"), message.code());
        assertFalse(message.text().endsWith("."), "texts are joined to advice by a full stop");
    }

    @ParameterizedTest
    @EnumSource(Message.class)
    void placesAreValueOrNumbersFromZeroWithoutGaps(Message message) {
        Set<Integer> numbers = new TreeSet<>();
        Matcher matcher = PLACE.matcher(message.text() + message.advice());
        while (matcher.find()) {
            if (!matcher.group(1).equals("value")) {
                numbers.add(Integer.valueOf(matcher.group(1)));
            }
        }
        assertEquals(
                Stream.iterate(0, i -> i + 1).limit(numbers.size()).toList(), List.copyOf(numbers), message.name());
    }

    @ParameterizedTest
    @EnumSource(Message.class)
    void bracesInAValueAreNotFilled(Message message) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(message, Place.ofFile("f"), "{0}{value}", "{1}", "{value}", "x", "y");
        Diagnostic d = diagnostics.all().get(0);
        assertFalse(d.advice().isBlank());
        assertEquals(message.text().contains("{value}"), d.text().contains("{0}{value}"));
    }

    @Test
    void everyMessageIsSaidSomewhere() throws IOException {
        StringBuilder sources = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("document/Message.java"))
                    .toList()) {
                sources.append(Files.readString(file));
            }
        }
        List<String> silent = Stream.of(Message.values())
                .map(Enum::name)
                .filter(m -> !Pattern.compile("Message\\." + m + "\\b")
                        .matcher(sources)
                        .find())
                .toList();
        assertEquals(List.of(), silent);
    }

    @Test
    void aHostileTextCannotFillMemoryWithErrors() {
        Diagnostics diagnostics = new Diagnostics();
        for (int i = 0; i < 10_000; i++) {
            diagnostics.add(Message.BAD_ID, Place.ofFile("f"), "x".repeat(5000));
        }
        assertEquals(Diagnostics.LIMIT + 1, diagnostics.all().size());
        assertTrue(diagnostics.all().stream().allMatch(d -> d.text().length() < 200));
        assertTrue(diagnostics.all().stream().anyMatch(d -> d.message() == Message.TOO_MANY));
    }
}

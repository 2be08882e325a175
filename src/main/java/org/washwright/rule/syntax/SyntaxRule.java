package org.washwright.rule.syntax;

import java.util.List;
import java.util.Map;
import org.washwright.document.Place;

/**
 * A rule as written.
 *
 * @param name name behind the word {@code rule}, or the table's title
 * @param annotations text of each annotation by name
 * @param patterns conditions in order
 * @param calls consequences in order
 * @param place where the rule starts
 */
public record SyntaxRule(
        String name, Map<String, Text> annotations, List<SyntaxPattern> patterns, List<SyntaxCall> calls, Place place) {

    /** A text with its place. */
    public record Text(String text, Place place) {}

    /** Keeps copies. */
    public SyntaxRule {
        annotations = Map.copyOf(annotations);
        patterns = List.copyOf(patterns);
        calls = List.copyOf(calls);
    }
}

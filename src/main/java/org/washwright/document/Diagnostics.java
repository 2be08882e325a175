package org.washwright.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects everything found wrong, so that all errors come at once; bounded, so that a hostile text can't fill memory. */
public final class Diagnostics {

    /** Most diagnostics kept; past that one last message says that there are more. */
    public static final int LIMIT = 500;

    private static final int VALUE_LENGTH = 80;

    private final List<Diagnostic> found = new ArrayList<>();

    /**
     * Adds a diagnostic.
     *
     * @param message the message
     * @param place where
     * @param value the value found, may be empty
     * @param words replace {@code {0}}, {@code {1}} ... in the message's text and advice
     */
    public void add(Message message, Place place, String value, Object... words) {
        if (found.size() > LIMIT) {
            return;
        }
        if (found.size() == LIMIT) {
            found.add(tooMany(place));
            return;
        }
        String shown = shorten(value);
        found.add(new Diagnostic(
                message, place, shown, fill(message.text(), shown, words), fill(message.advice(), shown, words)));
    }

    /** Adds all of another collection. */
    public void addAll(Diagnostics other) {
        other.found.forEach(this::add);
    }

    /** Adds one found elsewhere. */
    public void add(Diagnostic diagnostic) {
        if (found.size() < LIMIT) {
            found.add(diagnostic);
        } else if (found.size() == LIMIT) {
            found.add(tooMany(diagnostic.place()));
        }
    }

    private static Diagnostic tooMany(Place place) {
        return new Diagnostic(Message.TOO_MANY, place, "", Message.TOO_MANY.text(), Message.TOO_MANY.advice());
    }

    /** True when at least one error (not only warnings) was found. */
    public boolean hasErrors() {
        return found.stream().anyMatch(d -> d.severity() == Severity.ERROR);
    }

    /** Everything found, ordered by file, line and column. */
    public List<Diagnostic> all() {
        return found.stream()
                .sorted(Comparator.comparing((Diagnostic d) -> d.place().file())
                        .thenComparingInt(d -> d.place().line())
                        .thenComparingInt(d -> d.place().column()))
                .toList();
    }

    private static String shorten(String value) {
        StringBuilder clean = new StringBuilder();
        value.codePoints()
                .limit(VALUE_LENGTH + 1L)
                .forEach(c -> clean.appendCodePoint(Character.isISOControl(c) ? ' ' : c));
        return value.codePointCount(0, value.length()) <= VALUE_LENGTH
                ? clean.toString()
                : clean.substring(0, clean.offsetByCodePoints(0, VALUE_LENGTH)) + "…";
    }

    private static String fill(String template, String value, Object... words) {
        // One pass, so that braces inside a user's value are never read as places of the template.
        StringBuilder out = new StringBuilder();
        int i = 0;
        while (i < template.length()) {
            int open = template.indexOf('{', i);
            int close = open < 0 ? -1 : template.indexOf('}', open);
            if (close < 0) {
                return out.append(template, i, template.length()).toString();
            }
            out.append(template, i, open);
            String name = template.substring(open + 1, close);
            out.append(name.equals("value") ? value : shorten(String.valueOf(words[Integer.parseInt(name)])));
            i = close + 1;
        }
        return out.toString();
    }
}

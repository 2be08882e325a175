package org.washwright.document.edit;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;

/** Writes data as YAML the way its neighbours are written. */
final class Written {

    private static final String INDICATORS = "-?:,[]{}#&*!|>'\"%@`=<~";
    private static final String STEP = "  ";

    private final String newline;

    Written(String newline) {
        this.newline = newline;
    }

    /** A value within braces or brackets. */
    String flow(Data data) {
        if (data instanceof Data.Named map) {
            return map.entries().entrySet().stream()
                    .map(e -> scalar(e.getKey(), true) + ": " + flow(e.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        return data instanceof Data.Many list
                ? list.items().stream().map(this::flow).collect(Collectors.joining(", ", "[", "]"))
                : scalar(data.text(), true);
    }

    /**
     * A value behind a dash, its further lines in this column.
     *
     * @param model a neighbour, which says what stands on one line
     */
    String item(Data data, int column, Optional<Spot> model) {
        if (model.map(Spot::flow).orElse(!(data instanceof Data.Named))) {
            return value(data);
        }
        return data instanceof Data.Named map && !map.entries().isEmpty() ? block(map, column, model) : value(data);
    }

    /** The lines of a map; the first one starts where the writer stands. */
    String block(Data.Named map, int column, Optional<Spot> model) {
        return map.entries().entrySet().stream()
                .map(e -> entry(e, column, model))
                .collect(Collectors.joining(newline + " ".repeat(column)));
    }

    private String entry(Map.Entry<String, Data> e, int column, Optional<Spot> model) {
        return entry(e.getKey(), e.getValue(), column, model.flatMap(m -> member(m, e.getKey())));
    }

    /** Key and value of an entry whose key stands in this column. */
    String entry(String key, Data value, int column, Optional<Spot> model) {
        boolean lines = model.map(m -> m.kind() != Spot.Kind.ONE && !m.flow()).orElse(false);
        String name = scalar(key, false) + ":";
        if (lines && value instanceof Data.Named map && !map.entries().isEmpty()) {
            int deeper = column + STEP.length();
            return name + newline + " ".repeat(deeper) + block(map, deeper, model);
        }
        if (lines && value instanceof Data.Many list && !list.items().isEmpty()) {
            int deeper = column + STEP.length();
            Optional<Spot> first = model.map(Spot::members)
                    .filter(m -> !m.isEmpty())
                    .map(m -> m.get(0).value());
            return name
                    + list.items().stream()
                            .map(i -> newline + " ".repeat(deeper) + "- " + item(i, deeper + STEP.length(), first))
                            .collect(Collectors.joining());
        }
        return name + " " + value(value);
    }

    private static Optional<Spot> member(Spot spot, String key) {
        return spot.members().stream()
                .filter(m -> m.key().equals(key))
                .map(Spot.Member::value)
                .findFirst();
    }

    /** A value on the line it stands on. */
    String value(Data data) {
        return data instanceof Data.One one ? scalar(one.text(), false) : flow(data);
    }

    /** A single value in place of another, in the same quotes where they will do. */
    static String scalar(String text, boolean flow, ScalarStyle like) {
        if (like == ScalarStyle.DOUBLE_QUOTED) {
            return quoted(text);
        }
        boolean lines = text.chars().anyMatch(c -> c == '\t' || isBreak(c));
        return like == ScalarStyle.SINGLE_QUOTED && !lines ? "'" + text.replace("'", "''") + "'" : scalar(text, flow);
    }

    static String scalar(String text, boolean flow) {
        return isPlain(text, flow) ? text : quoted(text);
    }

    private static boolean isPlain(String text, boolean flow) {
        if (text.isEmpty() || !text.equals(text.strip()) || text.endsWith(":")) {
            return false;
        }
        boolean negative = text.matches("-[0-9].*");
        boolean harmless = text.indexOf(": ") < 0
                && text.indexOf(" #") < 0
                && text.chars().noneMatch(c -> c == '\t' || isBreak(c))
                && !text.startsWith("...");
        boolean between = text.chars().noneMatch(c -> ",[]{}\"".indexOf(c) >= 0) && text.indexOf(":") < 0;
        return harmless && (negative || INDICATORS.indexOf(text.charAt(0)) < 0) && (!flow || between);
    }

    private static boolean isBreak(int c) {
        return c < ' ' || c == 0x7F || c == 0x85 || c == 0x2028 || c == 0x2029 || c == 0xFEFF;
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.chars().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (isBreak(c)) {
                        out.append(String.format(java.util.Locale.ROOT, "\\u%04x", c));
                    } else {
                        out.append((char) c);
                    }
                }
            }
        });
        return out.append('"').toString();
    }
}

package org.washwright.editing.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.washwright.document.edit.Data;
import org.washwright.editing.Posted;

/** Between what a file says and what a form's field shows. */
final class FieldValues {

    private static final String VALUE = "value";
    private static final String SOURCE = "source";

    private FieldValues() {}

    /** What is typed in a field: the value, and its source where it may have one. */
    record Typed(String text, String source) {
        boolean isEmpty() {
            return text.isEmpty() && source.isEmpty();
        }
    }

    static Typed shown(FieldSpec spec, Optional<Data> data) {
        if (data.isEmpty()) {
            return new Typed("", "");
        }
        Data d = data.get();
        return switch (spec.shape()) {
            case LIST -> new Typed(String.join("\n", d.texts()), "");
            case CURVE -> new Typed(curve(d), "");
            case VALUE ->
                d instanceof Data.Named map
                        ? new Typed(
                                bars(map.entries().getOrDefault(VALUE, Data.one(""))),
                                map.entries().getOrDefault(SOURCE, Data.one("")).text())
                        : new Typed(bars(d), "");
            default -> new Typed(d.text(), "");
        };
    }

    private static String bars(Data data) {
        return String.join(" | ", data.texts());
    }

    private static String curve(Data data) {
        return data instanceof Data.Many points
                ? points.items().stream()
                        .map(p -> String.join(" = ", p.texts()))
                        .collect(Collectors.joining("\n"))
                : data.text();
    }

    static Typed typed(FieldSpec spec, Posted posted) {
        String text = posted.word(spec.name());
        return new Typed(text, spec.hasSource() ? posted.word(spec.name() + ".source") : "");
    }

    /** What the file is to say; empty to leave the field out. */
    static Optional<Data> data(FieldSpec spec, Typed typed) {
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        List<String> lines = typed.text()
                .lines()
                .map(String::strip)
                .filter(l -> !l.isEmpty())
                .toList();
        return Optional.of(
                switch (spec.shape()) {
                    case LIST -> Data.texts(lines);
                    case CURVE ->
                        new Data.Many(lines.stream().map(FieldValues::point).toList());
                    case VALUE -> value(typed);
                    default -> Data.one(typed.text());
                });
    }

    private static Data point(String line) {
        int at = line.lastIndexOf('=');
        return at < 0
                ? Data.texts(List.of(line))
                : Data.texts(List.of(
                        line.substring(0, at).strip(), line.substring(at + 1).strip()));
    }

    private static Data value(Typed typed) {
        List<String> words = new ArrayList<>(
                Stream.of(typed.text().split("\\|")).map(String::strip).toList());
        Data value = words.size() > 1 ? Data.texts(words) : Data.one(typed.text());
        if (typed.source().isEmpty()) {
            return value;
        }
        Map<String, Data> both = new LinkedHashMap<>();
        both.put(VALUE, value);
        both.put(SOURCE, Data.one(typed.source()));
        return new Data.Named(both);
    }
}

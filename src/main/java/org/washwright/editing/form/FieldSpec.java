package org.washwright.editing.form;

import java.util.List;
import org.washwright.editing.form.Choices.Choice;

/**
 * One field of an entry's form.
 *
 * @param path pointer below the entry, for instance {@code /properties/density}
 * @param label what a reader calls it
 * @param help what it may hold
 * @param shape how it is written in the file
 * @param choices what may be chosen; none for anything
 * @param group heading it stands under; empty for the first fields
 */
record FieldSpec(String path, String label, String help, Shape shape, List<Choice> choices, String group) {

    /** How a field is written in the file. */
    enum Shape {
        /** A single value. */
        TEXT,
        /** A single value of a sentence or more. */
        LONG,
        /** A list of words, one a line. */
        LIST,
        /** A value, several joined by a bar, or a value with its source. */
        VALUE,
        /** Breakpoints, one a line: a quantity, an equals sign and points. */
        CURVE
    }

    static FieldSpec text(String path, String label, String help) {
        return new FieldSpec(path, label, help, Shape.TEXT, List.of(), "");
    }

    static FieldSpec sentence(String path, String label, String help) {
        return new FieldSpec(path, label, help, Shape.LONG, List.of(), "");
    }

    static FieldSpec list(String path, String label, String help) {
        return new FieldSpec(path, label, help, Shape.LIST, List.of(), "");
    }

    static FieldSpec choice(String path, String label, String help, List<Choice> choices) {
        return new FieldSpec(path, label, help, Shape.TEXT, choices, "");
    }

    FieldSpec under(String heading) {
        return new FieldSpec(path, label, help, shape, choices, heading);
    }

    /** Name of the form's field. */
    public String name() {
        return "f" + path.replace('/', '.');
    }

    /** Id of the form's field. */
    public String id() {
        return "f" + path.replace('/', '-');
    }

    /** Whether it is typed on several lines. */
    public boolean isLines() {
        return shape != Shape.TEXT && shape != Shape.VALUE;
    }

    /** Whether it may name its source. */
    public boolean hasSource() {
        return shape == Shape.VALUE;
    }
}

package org.washwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** The list of attributes in the documents is written from the program; write it anew with -Dwashwright.write=true. */
class TaskAttributesTest {

    private static final Path FILE = Path.of("docs/task-attributes.md");

    @Test
    void the_documented_attributes_are_those_of_the_program() throws IOException {
        String text = text();
        if (Boolean.getBoolean("washwright.write")) {
            Files.writeString(FILE, text);
        }
        assertEquals(
                text, Files.readString(FILE), FILE + " is out of date; run this test with -Dwashwright.write=true");
    }

    private static String text() {
        StringBuilder out = new StringBuilder("# What can be said of a cleaning task\n\n"
                + "Each heading gives the group's key in files and its fact type in rules. Values are written as in\n"
                + "[task-format.md](task-format.md); rules compare them as in [rule-language.md](rule-language.md).\n");
        for (Group group : Group.values()) {
            out.append("\n## ")
                    .append(group.heading())
                    .append("\n\n`")
                    .append(group.key())
                    .append("` in files");
            if (group.isList()) {
                out.append(", a list of at most ").append(group.cap());
            }
            out.append("; `")
                    .append(group.factType())
                    .append("` in rules\n\n| attribute | what it is | holds | asked |\n");
            out.append("|---|---|---|---|\n");
            group.attributes().forEach(a -> out.append(row(a)));
        }
        return out.toString();
    }

    private static String row(Attribute a) {
        String asked = switch (a.standing()) {
            case ESSENTIAL -> "first";
            case FURTHER -> "when it matters";
            case COMPUTED -> "computed";
        };
        return "| `" + a.name() + "` | " + a.label() + " | " + holds(a.type()) + " | " + asked + " |\n";
    }

    private static String holds(FieldType type) {
        if (type instanceof FieldType.NumberType n) {
            return n.dimension().label() + ", such as `" + n.dimension().example() + "`";
        }
        return type instanceof FieldType.TermType t && !t.isFlag()
                ? "a term of kind `" + t.kind() + "`"
                : type.describe();
    }
}

package org.washwright.casework;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.washwright.task.Group;

/** How places of a document and references of an answer are called in the form. */
final class FormNames {
    static final String DECLARED = "attributes";

    private FormNames() {}

    /** The field a place in the document belongs to. */
    static String ofPointer(String pointer) {
        String name = pointer.isEmpty() ? "title" : pointer.substring(1).replace('/', '.');
        for (Group group : Group.values()) {
            name = name.replaceFirst("^" + group.key() + "\\.list(\\.|$)", group.key() + "$1");
        }
        String[] parts = name.split("\\.");
        Optional<Group> group = Group.byKey(parts[0]);
        boolean list = group.filter(Group::isList).isPresent();
        boolean entry = list ? parts.length == 2 && parts[1].matches("[0-9]+") : group.isPresent() && parts.length == 1;
        if (entry) {
            return name + "." + group.orElseThrow().attributes().get(0).name();
        }
        int depth = list ? 3 : parts[0].equals("title") || parts[0].equals("notes") ? 1 : 2;
        return String.join(".", List.of(parts).subList(0, Math.min(depth, parts.length)));
    }

    /** The field, or the section of a list, that a reference of an answer is about. */
    static String ofRef(String ref) {
        String name = ref.startsWith(DECLARED + "/") ? ref.replaceFirst("/value$", "") : ref;
        return name.replace('/', '.');
    }

    /** The reference of a field, as answers write it. */
    static String ref(String field) {
        String ref = field.replace('.', '/');
        return field.startsWith(DECLARED + ".") ? ref + "/value" : ref;
    }

    /** The attribute of a field whatever its row, for instance {@code materials.hardness}. */
    static String attribute(String field) {
        return field.replaceFirst("\\.[0-9]+\\.", ".");
    }

    /** What a reader calls a field, with its row, as the start of a sentence. */
    static String label(String field) {
        String[] parts = field.split("\\.");
        Optional<Group> group = Group.byKey(parts[0]);
        if (group.isEmpty() || parts.length == 1) {
            return "";
        }
        String row = group.get().isList() && parts[1].matches("[0-9]+") ? " " + (Integer.parseInt(parts[1]) + 1) : "";
        String attribute = group.get()
                .attribute(parts[parts.length - 1])
                .map(a -> ", " + a.label())
                .orElse("");
        return capital(group.get().label()) + row + attribute + ": ";
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}

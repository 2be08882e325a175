package org.washwright.document.edit;

import java.util.Arrays;
import java.util.List;

/** JSON pointers (RFC 6901) step by step. */
public final class Pointers {

    private Pointers() {}

    /** The steps of a pointer; none for the document itself. */
    public static List<String> steps(String pointer) {
        if (pointer.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(pointer.substring(1).split("/", -1))
                .map(s -> s.replace("~1", "/").replace("~0", "~"))
                .toList();
    }

    /** The pointer of a member. */
    public static String child(String pointer, String step) {
        return pointer + "/" + step.replace("~", "~0").replace("/", "~1");
    }

    /** The pointer of an item. */
    public static String child(String pointer, int item) {
        return pointer + "/" + item;
    }

    /** Where the last step of a pointer starts from; empty for a member of the document itself. */
    public static String parent(String pointer) {
        return pointer.substring(0, pointer.lastIndexOf('/'));
    }

    /** The last step. */
    public static String last(String pointer) {
        List<String> steps = steps(pointer);
        return steps.isEmpty() ? "" : steps.get(steps.size() - 1);
    }

    /** The number of an item; -1 when the step is none. */
    public static int index(String step) {
        return step.matches("0|[1-9][0-9]{0,8}") ? Integer.parseInt(step) : -1;
    }
}

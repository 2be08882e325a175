package org.washwright.document.edit;

import java.util.List;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;

/**
 * Where a value stands in a text, from the first to behind the last character of it.
 *
 * @param kind what it is
 * @param flow true for a map or list between braces or brackets
 * @param style how a single value is written
 * @param members entries or items in order
 */
record Spot(Kind kind, int start, int end, boolean flow, ScalarStyle style, List<Member> members) {

    enum Kind {
        ONE,
        MANY,
        NAMED
    }

    /**
     * An entry of a map or an item of a list.
     *
     * @param key key; empty for an item
     * @param from where its key starts; for an item of a block list its dash, else its value
     * @param keyEnd behind the key; {@code from} for an item
     */
    record Member(String key, int from, int keyEnd, Spot value) {
        int end() {
            return Math.max(keyEnd, value.end());
        }
    }

    boolean isEmptyScalar() {
        return kind == Kind.ONE && start == end;
    }
}

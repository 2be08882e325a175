package org.washwright.engine;

import java.util.List;
import org.washwright.engine.derive.Derivation;

/**
 * Where the value of an attribute comes from.
 *
 * @param kind given, computed, read from the catalogue, or proposed by a question tree
 * @param detail JSON pointer, formula, term or path through the tree
 * @param inputs references ({@code fact id/attribute}) of what it was made from
 * @param further references of what it would be made from too if that were known; never part of the value as it is
 * @param source citation; empty for what was given
 * @param warnings where a formula was used beyond what it holds for, in words
 */
public record Origin(
        Kind kind, String detail, List<String> inputs, List<String> further, String source, List<String> warnings) {

    /** Ways in which a value can come to be. */
    public enum Kind {
        GIVEN("given"),
        COMPUTED("computed"),
        CATALOGUE("catalogue"),
        TREE("question tree"),
        NOT_GIVEN("not given");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As shown in answers. */
        public String word() {
            return word;
        }
    }

    /** Nothing was said. */
    public static final Origin NONE = new Origin(Kind.NOT_GIVEN, "", List.of(), "");

    /** An origin to which nothing further could add. */
    public Origin(Kind kind, String detail, List<String> inputs, String source) {
        this(kind, detail, inputs, List.of(), source, List.of());
    }

    /** The origin of a value that a formula computed. */
    static Origin computed(String formula, Derivation.Computed computed, String source) {
        return new Origin(Kind.COMPUTED, formula, computed.inputs(), computed.further(), source, computed.warnings());
    }

    /** The same origin by a source; without one, the same origin. */
    Origin by(String citation) {
        return citation.isEmpty() ? this : new Origin(kind, detail, inputs, further, citation, warnings);
    }

    /** Keeps copies. */
    public Origin {
        inputs = List.copyOf(inputs);
        further = List.copyOf(further);
        warnings = List.copyOf(warnings);
    }
}

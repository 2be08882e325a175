package org.washwright.rule;

import java.util.List;

/** A sentence with places for values. */
public record Reason(List<Part> parts) {

    /** Keeps a copy. */
    public Reason {
        parts = List.copyOf(parts);
    }

    /** A piece of the sentence. */
    public sealed interface Part {

        /** Words as they are. */
        record Words(String text) implements Part {}

        /** Name of the fact that a pattern matched. */
        record NameOf(int pattern) implements Part {}

        /** Value of a field of the fact that a pattern matched. */
        record ValueOf(int pattern, Field field) implements Part {}

        /** Name of the process the finding is about. */
        record TargetName() implements Part {}
    }
}

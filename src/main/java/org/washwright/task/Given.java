package org.washwright.task;

/**
 * A value of a task with where it comes from.
 *
 * @param value the value that counts
 * @param pointer JSON pointer where it was given
 * @param treePath path through a question tree that proposed it, or that was overruled; empty when none was played
 * @param overruled true when a given value beat the tree's proposal
 * @param code text of a code attribute; empty for others
 */
public record Given(Value value, String pointer, String treePath, boolean overruled, String code) {

    /** A plainly given value. */
    public static Given of(Value value, String pointer) {
        return new Given(value, pointer, "", false, "");
    }
}

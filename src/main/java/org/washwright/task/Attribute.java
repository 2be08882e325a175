package org.washwright.task;

/**
 * One thing that can be said of a task.
 *
 * @param name name in files and rules
 * @param label what a reader calls it
 * @param question as one would ask it on the shop floor
 * @param type what it can hold
 * @param standing whether it is asked first, asked further on, or computed
 */
public record Attribute(String name, String label, String question, FieldType type, Standing standing) {

    /** How an attribute comes to its value, and how soon one asks for it. */
    public enum Standing {
        /** Asked first: most tasks turn on it. */
        ESSENTIAL,
        /** Asked when it matters. */
        FURTHER,
        /** A formula gives it and nobody types it. */
        COMPUTED
    }

    static Attribute essential(String name, String label, String question, FieldType type) {
        return new Attribute(name, label, question, type, Standing.ESSENTIAL);
    }

    /** An attribute that is asked when it matters. */
    public static Attribute further(String name, String label, String question, FieldType type) {
        return new Attribute(name, label, question, type, Standing.FURTHER);
    }

    /** An attribute that a formula gives. */
    public static Attribute computed(String name, String label, String question, FieldType type) {
        return new Attribute(name, label, question, type, Standing.COMPUTED);
    }

    /** True when a formula gives it. */
    public boolean computed() {
        return standing == Standing.COMPUTED;
    }

    /** True when it is asked first. */
    public boolean isEssential() {
        return standing == Standing.ESSENTIAL;
    }
}

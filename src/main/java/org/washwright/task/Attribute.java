package org.washwright.task;

/**
 * One thing that can be said of a task.
 *
 * @param name name in files and rules
 * @param label what a reader calls it
 * @param question as one would ask it on the shop floor
 * @param type what it can hold
 * @param computed true when a formula gives it and nobody types it
 */
public record Attribute(String name, String label, String question, FieldType type, boolean computed) {

    static Attribute given(String name, String label, String question, FieldType type) {
        return new Attribute(name, label, question, type, false);
    }

    static Attribute computed(String name, String label, String question, FieldType type) {
        return new Attribute(name, label, question, type, true);
    }
}

package org.washwright.document.edit;

/** One change of a document, told by JSON pointers (RFC 6901). */
public sealed interface Change {

    /** Where it happens. */
    String pointer();

    /** Puts another value in place of the one at the pointer; a key that a map lacks is added behind its others. */
    record Put(String pointer, Data value) implements Change {}

    /**
     * Adds an item to the list at the pointer.
     *
     * @param at number it will have; the list's length to stand last
     */
    record Insert(String pointer, int at, Data value) implements Change {}

    /**
     * Adds an entry to the map at the pointer.
     *
     * @param at number it will have among the entries
     */
    record Enter(String pointer, int at, String key, Data value) implements Change {}

    /** Takes the value at the pointer out, with its key. */
    record Remove(String pointer) implements Change {}

    /** Gives the value at the pointer another number among its neighbours. */
    record Move(String pointer, int to) implements Change {}

    /** Gives the entry at the pointer another key. */
    record Rename(String pointer, String key) implements Change {}
}

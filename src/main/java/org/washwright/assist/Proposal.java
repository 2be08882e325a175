package org.washwright.assist;

/**
 * Something that may stand at a place.
 *
 * @param label as it is written, without quotes
 * @param insert what takes the place of the range
 * @param back how many characters before the end of what is inserted the caret goes
 * @param kind what sort of thing it is, in a word
 * @param name what a reader calls it; may be empty
 * @param explanation one line; may be empty
 */
public record Proposal(String label, String insert, int back, String kind, String name, String explanation) {

    static Proposal of(String label, String insert, String kind, String name, String explanation) {
        return new Proposal(label, insert, 0, kind, name, explanation);
    }

    Proposal caretBack(int characters) {
        return new Proposal(label, insert, characters, kind, name, explanation);
    }

    Proposal inserting(String other) {
        return new Proposal(label, other, back, kind, name, explanation);
    }
}

package org.washwright.assessment;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is not known of a task, seen by its consequence.
 *
 * @param notes by reference: {@code fact id/attribute}, or a group's key for what a list may still hold
 * @param first what to find out first, most telling first
 */
public record Wanted(Map<String, Note> notes, List<First> first) {

    /** Keeps copies. */
    public Wanted {
        notes = Map.copyOf(notes);
        first = List.copyOf(first);
    }

    /** Nothing can be said. */
    public static final Wanted NOTHING = new Wanted(Map.of(), List.of());

    /** What not knowing something does. */
    public enum Kind {
        /** The answer depends on it: a process, a stage, a limit, a caution or a proof. */
        DECIDES,
        /** It moves points and decides on no process. */
        MOVES,
        /** Rules read it, but as the task stands none of them waits for it. */
        SETTLED,
        /** No rule of the edition reads it. */
        UNREAD
    }

    /**
     * What not knowing one thing does.
     *
     * @param brief in a sentence that fits beside a field
     * @param text at more length
     */
    public record Note(Kind kind, String brief, String text) {

        static Note of(Kind kind, String text) {
            return new Note(kind, text, text);
        }
    }

    /** A thing to find out: its reference, the question to ask, and what hangs on it. */
    public record First(String ref, String question, String why) {}

    /** The note of a reference. */
    public Optional<Note> note(String ref) {
        return Optional.ofNullable(notes.get(ref));
    }
}

package org.washwright.access;

import java.util.UUID;

/**
 * Who did something; the name is kept beside the id so that records stay readable.
 *
 * @param id the account, null for the program itself
 */
public record Person(UUID id, String name) {
    /** The program itself. */
    public static final Person PROGRAM = new Person(null, "Washwright");

    /** Whoever is asking. */
    public static Person of(Caller caller) {
        return new Person(caller.accountId(), caller.name());
    }
}

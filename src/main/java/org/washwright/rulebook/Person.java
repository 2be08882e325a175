package org.washwright.rulebook;

import java.util.UUID;
import org.washwright.access.Caller;

/**
 * Who did something; the name is kept beside the id so that records stay readable.
 *
 * @param id the account, null for the program itself
 */
record Person(UUID id, String name) {
    static final Person PROGRAM = new Person(null, "Washwright");

    static Person of(Caller caller) {
        return new Person(caller.accountId(), caller.name());
    }
}

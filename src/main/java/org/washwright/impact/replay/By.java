package org.washwright.impact.replay;

import org.washwright.impact.meaning.Subject;

/**
 * A part of the change that made an answer differ.
 *
 * @param subject what of the edition it is
 * @param id its id in the later edition, or in the earlier one when it was taken out
 * @param name what a reader calls it
 */
public record By(Subject subject, String id, String name) {

    /** How it is told apart. */
    public String key() {
        return subject + " " + id;
    }
}

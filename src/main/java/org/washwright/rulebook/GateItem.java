package org.washwright.rulebook;

/**
 * One thing that is looked at before a release.
 *
 * @param id a short stable name
 * @param title what is looked at
 * @param mark how it stands
 * @param detail in a sentence, how it stands
 * @param path leads from the address of the edition to the place where it is mended; empty when there is none
 */
public record GateItem(String id, String title, Mark mark, String detail, String path) {

    /** How a thing stands. */
    public enum Mark {
        /** Nothing left to do. */
        MET("met"),
        /** The release itself does it. */
        AT_RELEASE("at the release"),
        /** Something is left; it can be released all the same by whoever says why. */
        OPEN("open"),
        /** It can't be released. */
        BLOCKED("in the way");

        private final String word;

        Mark(String word) {
            this.word = word;
        }

        /** As people say it. */
        public String word() {
            return word;
        }
    }
}

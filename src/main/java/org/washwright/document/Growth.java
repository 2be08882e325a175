package org.washwright.document;

/**
 * Keeps a document from growing far beyond its text: every value holds its pointer, so that a long key above many values
 * would be copied for each of them.
 */
final class Growth {

    private static final int MOST_VALUES = 500_000;
    private static final long MOST_POINTERS = 50_000_000;

    private int values;
    private long pointers;

    /** Says that a document holds too much, and where it became too much. */
    static final class TooMuch extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Place place;

        TooMuch(Place place) {
            super("a document of too many values", null, false, false);
            this.place = place;
        }

        void tell(Diagnostics diagnostics) {
            diagnostics.add(Message.TOO_LARGE, place, "a document of so many values", MOST_VALUES + " short ones");
        }
    }

    /** Counts a value. */
    void count(Place place) {
        values++;
        pointers += place.pointer().length();
        if (values > MOST_VALUES || pointers > MOST_POINTERS) {
            throw new TooMuch(new Place(place.file(), place.line(), place.column(), ""));
        }
    }
}

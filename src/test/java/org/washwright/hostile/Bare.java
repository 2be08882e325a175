package org.washwright.hostile;

/** What hostile rule text needs to compile where nothing checks it: facts of the names that rules use, and verbs. */
public final class Bare {

    private Bare() {}

    /** A verb. */
    public static void caution(String hazard, String reason) {
        if (hazard.isEmpty() || reason.isEmpty()) {
            throw new IllegalArgumentException("a caution says something");
        }
    }

    /** A soil. */
    public static final class Soil {

        /** What it is. */
        public String getKind() {
            return "soil-a";
        }

        /** How much of it there is. */
        public int getAmount() {
            return 5;
        }
    }
}

package org.washwright.explain.replay;

import java.util.Locale;

/** How titles and sentences are put together. */
final class Titles {

    private Titles() {}

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A count with its noun. */
    static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}

package org.washwright.document;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** Finds the known word nearest to a mistyped one, for advice in messages. */
public final class Similar {

    private Similar() {}

    private static final int MOST_COMPARED = 3000;

    /** Advice that is worked out when it is shown: of a million wrong words only the first few hundred are. */
    private record Advice(String typed, Collection<String> known) {
        @Override
        public String toString() {
            return text(typed, known);
        }
    }

    /**
     * Shows as "did you mean X?" when a known word is near, else as the known words themselves (at most twelve). The words
     * are looked at when it is shown.
     */
    public static Object advice(String typed, Collection<String> known) {
        return new Advice(typed, known);
    }

    private static String text(String typed, Collection<String> known) {
        if (known.size() > MOST_COMPARED) {
            return "write one of the " + known.size() + " known here";
        }
        String near = known.stream()
                .filter(k -> distance(typed.toLowerCase(Locale.ROOT), k.toLowerCase(Locale.ROOT))
                        <= Math.max(1, typed.length() / 3))
                .min(Comparator.comparingInt(
                                (String k) -> distance(typed.toLowerCase(Locale.ROOT), k.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()))
                .orElse("");
        if (!near.isEmpty()) {
            return "did you mean \"" + near + "\"?";
        }
        String list = String.join(", ", known.stream().sorted().limit(12).toList());
        return "known here: " + list + (known.size() > 12 ? " and " + (known.size() - 12) + " more" : "");
    }

    /** Levenshtein distance, with words cut at 40 characters. */
    static int distance(String first, String second) {
        String a = first.length() > 40 ? first.substring(0, 40) : first;
        String b = second.length() > 40 ? second.substring(0, 40) : second;
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] current = new int[b.length() + 1];
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(swap, Math.min(previous[j], current[j - 1]) + 1);
            }
            previous = current;
        }
        return previous[b.length()];
    }
}

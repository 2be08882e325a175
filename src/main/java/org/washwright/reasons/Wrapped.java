package org.washwright.reasons;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines for drawings, where nothing breaks it by itself. */
final class Wrapped {

    private static final int WIDE = 28;
    private static final int MOST = 5;

    private Wrapped() {}

    /** Lines of at most 28 letters; what is more than five lines ends in an ellipsis. */
    static List<String> of(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            for (String piece : pieces(word)) {
                if (line.length() > 0 && line.length() + 1 + piece.length() > WIDE) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() == 0 ? "" : " ").append(piece);
            }
        }
        lines.add(line.toString());
        if (lines.size() <= MOST) {
            return lines;
        }
        List<String> cut = new ArrayList<>(lines.subList(0, MOST));
        cut.set(MOST - 1, cut.get(MOST - 1) + " …");
        return cut;
    }

    private static List<String> pieces(String word) {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < word.length(); i += WIDE) {
            pieces.add(word.substring(i, Math.min(word.length(), i + WIDE)));
        }
        return pieces.isEmpty() ? List.of("") : pieces;
    }
}

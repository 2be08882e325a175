package org.washwright.document;

import java.util.Arrays;
import java.util.Optional;

/** A text with its file's name, for finding the place of an offset and the text of a line. Lines end with a line feed. */
public final class SourceText {

    private final String file;
    private final String text;
    private final int[] starts;
    private final int lastLine;

    /** The text of a file. */
    public SourceText(String file, String text) {
        this.file = file;
        this.text = text;
        int[] found = new int[text.length() + 1];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                found[count++] = i + 1;
            }
        }
        this.starts = Arrays.copyOf(found, count);
        this.lastLine = at(Math.max(0, text.stripTrailing().length() - 1)).line();
    }

    /** Name of the file. */
    public String file() {
        return file;
    }

    /** The whole text. */
    public String text() {
        return text;
    }

    /** Place of an offset. */
    public Place at(int offset) {
        int found = Arrays.binarySearch(starts, offset);
        int line = found >= 0 ? found : -found - 2;
        return new Place(file, line + 1, offset - starts[line] + 1, "");
    }

    /** A place by line and column, moved to the last line that holds anything when it lies behind it. */
    public Place at(int line, int column) {
        return line < 1 || line > lastLine
                ? new Place(file, lastLine, 1, "")
                : new Place(file, line, Math.max(column, 1), "");
    }

    /** A line without the blanks around it; empty when there is none. */
    public String line(int number) {
        if (number < 1 || number > starts.length) {
            return "";
        }
        int end = number == starts.length ? text.length() : starts[number];
        return text.substring(starts[number - 1], end).strip();
    }

    /** Start of the first line of more characters than this. */
    public Optional<Place> longerThan(int most) {
        for (int i = 0; i < starts.length; i++) {
            int end = i + 1 < starts.length ? starts[i + 1] : text.length();
            if (end - starts[i] > most) {
                return Optional.of(new Place(file, i + 1, 1, ""));
            }
        }
        return Optional.empty();
    }

    /** Place of the first {@code word} behind the start of a line; that line's start when there is none. */
    public Place find(String word, int line) {
        int from = line < 1 || line > starts.length ? 0 : starts[line - 1];
        int found = text.indexOf(word, from);
        return at(found < 0 ? from : found);
    }
}

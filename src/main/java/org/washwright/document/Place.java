package org.washwright.document;

/**
 * Where something stands in a text.
 *
 * @param file name of the file, or {@code -} for standard input and request bodies
 * @param line line from 1, 0 when it is not known
 * @param column column from 1, 0 when it is not known
 * @param pointer JSON pointer (RFC 6901) within a document; empty for the document itself and for rule text
 */
public record Place(String file, int line, int column, String pointer) {

    /** The start of a file. */
    public static Place ofFile(String file) {
        return new Place(file, 0, 0, "");
    }

    /** The same position seen as the member {@code key} of the value here. */
    public Place child(String key, int childLine, int childColumn) {
        String escaped = key.replace("~", "~0").replace("/", "~1");
        return new Place(file, childLine, childColumn, pointer + "/" + escaped);
    }

    /** {@code file:line:column}, with the pointer behind it when there is one. */
    @Override
    public String toString() {
        String position = line == 0 ? file : file + ":" + line + ":" + column;
        return pointer.isEmpty() ? position : position + " (" + pointer + ")";
    }
}

package org.washwright.hostile;

/**
 * A text written to do harm.
 *
 * @param category which way of doing harm
 * @param name what it tries
 * @param file name of the file it stands in: one of an edition, {@code task.yaml} or {@code task.json}
 * @param line line that has to be named
 * @param text the text
 */
record HostileText(String category, String name, String file, int line, String text) {

    boolean isTask() {
        return file.startsWith("task.");
    }

    @Override
    public String toString() {
        return category + ": " + name;
    }
}

package org.washwright.taskfile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The kinds of file a task can stand in. */
public enum TaskFormat {
    YAML("application/yaml", "yaml", "yml"),
    JSON("application/json", "json"),
    /** A table in comma-separated text. */
    CSV("text/csv", "csv"),
    /** A workbook with a sheet for each list. */
    XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "xlsx");

    private final String mediaType;
    private final List<String> endings;

    TaskFormat(String mediaType, String... endings) {
        this.mediaType = mediaType;
        this.endings = List.of(endings);
    }

    /** Media type, without a charset. */
    public String mediaType() {
        return mediaType;
    }

    /** Usual ending of its files, without a point. */
    public String ending() {
        return endings.get(0);
    }

    /** The kind of file with this ending. */
    public static Optional<TaskFormat> byEnding(String ending) {
        return Arrays.stream(values())
                .filter(f -> f.endings.contains(ending.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** The kind of file with this name. */
    public static Optional<TaskFormat> byName(String name) {
        return byEnding(name.substring(name.lastIndexOf('.') + 1));
    }

    /** All endings, for people. */
    public static String all() {
        return String.join(", ", Arrays.stream(values()).map(TaskFormat::ending).toList());
    }
}

package org.washwright.taskfile;

/** Where a reader of comma-separated text (RFC 4180) stands. Cutting rows and cutting cells follow this one table. */
public enum CsvState {
    /** Before a cell, or among the blanks in front of it. */
    START,
    /** In a cell without quotes. */
    PLAIN,
    /** Between quotes. */
    QUOTED,
    /** Right behind a quote that closes, or is the first of two that stand for one. */
    CLOSED,
    /** Behind a quoted cell, where only blanks may follow. */
    AFTER;

    /** Where it stands behind the next character. */
    public CsvState next(int c) {
        return switch (this) {
            case START -> c == '"' ? QUOTED : c == ',' || c == ' ' ? START : PLAIN;
            case PLAIN -> c == ',' ? START : PLAIN;
            case QUOTED -> c == '"' ? CLOSED : QUOTED;
            case CLOSED -> c == '"' ? QUOTED : c == ',' ? START : AFTER;
            case AFTER -> c == ',' ? START : AFTER;
        };
    }
}

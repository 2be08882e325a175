package org.washwright.report;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of file that a report comes as. */
public enum ReportFormat {
    /** The paper. */
    PDF("pdf", "application/pdf"),
    /** Its figures as cells. */
    XLSX("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
    /** The paper as one page that needs nothing beside it. */
    HTML("html", "text/html;charset=UTF-8");

    private final String ending;
    private final String mediaType;

    ReportFormat(String ending, String mediaType) {
        this.ending = ending;
        this.mediaType = mediaType;
    }

    /** How names of its files end, without the dot. */
    public String ending() {
        return ending;
    }

    /** As it stands in headers. */
    public String mediaType() {
        return mediaType;
    }

    /** The kind with that ending, whatever its case. */
    public static Optional<ReportFormat> byEnding(String ending) {
        return Arrays.stream(values())
                .filter(f -> f.ending.equals(ending.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** The kind that a file's name tells. */
    public static Optional<ReportFormat> byName(String file) {
        return byEnding(file.substring(file.lastIndexOf('.') + 1));
    }

    /** All endings, as an advice names them. */
    public static String all() {
        return Arrays.stream(values()).map(ReportFormat::ending).collect(Collectors.joining(", "));
    }

    /** The bytes of a report of this kind. */
    public byte[] write(Report report) {
        return switch (this) {
            case PDF -> new ReportPdf().write(report);
            case XLSX -> new ReportWorkbook(report).write();
            case HTML -> ReportHtml.file(report).getBytes(StandardCharsets.UTF_8);
        };
    }
}

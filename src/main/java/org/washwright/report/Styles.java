package org.washwright.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** The style sheets of the report: one for all media, and what each medium adds. */
final class Styles {

    private static final String ASSETS = "/META-INF/resources/assets/";

    private Styles() {}

    /** What all media share; a served page links to the same file. */
    static String shared() {
        return text(ASSETS + "report.css");
    }

    /** Pages, running heads and page numbers. */
    static String paper() {
        return text("paper.css");
    }

    /** What a screen adds, with the fonts inside, for a file that stands alone. */
    static String screenOfFiles() {
        String screen = text(ASSETS + "report-screen.css");
        for (String font : new String[] {
            "atkinson-hyperlegible-next-latin-400-normal",
            "atkinson-hyperlegible-next-latin-700-normal",
            "literata-latin-600-normal"
        }) {
            String data = Base64.getEncoder().encodeToString(bytes(ASSETS + "fonts/" + font + ".woff2"));
            screen =
                    screen.replace("url(\"fonts/" + font + ".woff2\")", "url(\"data:font/woff2;base64," + data + "\")");
        }
        return screen;
    }

    private static String text(String resource) {
        return new String(bytes(resource), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = Styles.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program came without " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("a bundled file", e);
        }
    }
}

package org.washwright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Answer;

/** The PDF as an independent reader of it sees it: PDFBox. */
class ReportPdfTest {

    /** Signs of figures: units, powers, comparisons, formulas, and the thin space between thousands. */
    private static final String SIGNS =
            "\u00B5 \u00B2 \u00B3 \u00B7 \u20AC \u2264 \u2265 \u00B0 \u2212 \u00D7 \u00F7 \u221A \u03C0"
                    + " \u0394 \u03B3 \u03C1 \u03B8 \u221E \u2192 \u2080 10\u207B\u2076 1\u2009000 1\u202F000 \u2103";

    private static final Report REPORT = signed(Answers.designed("bearing-rings"));
    private static final byte[] PDF = new ReportPdf().write(REPORT);

    private static Report signed(Report report) {
        return Answers.of("Rings " + SIGNS + " \u0639 end", report.notes(), report.answer());
    }

    @Test
    void the_same_answer_gives_the_same_bytes() {
        assertArrayEquals(PDF, new ReportPdf().write(REPORT));
    }

    @Test
    void every_font_is_one_of_ours_and_embedded() throws IOException {
        Set<String> names = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(PDF)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    names.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
                }
            }
        }
        assertEquals(3, names.size(), names.toString());
        assertTrue(names.stream().allMatch(n -> n.startsWith("Literata") || n.startsWith("AtkinsonHyperlegibleNext")));
    }

    /** Glyph 0 of a TrueType font is the one that is shown for a missing character (OpenType, table cmap). */
    @Test
    void no_sign_is_drawn_as_a_missing_one() throws IOException {
        List<String> missing = new ArrayList<>();
        AtomicInteger drawn = new AtomicInteger();
        PDFTextStripper every = new PDFTextStripper() {
            @Override
            protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
                drawn.incrementAndGet();
                if (((PDType0Font) font).codeToGID(code) == 0) {
                    missing.add(font.getName() + " " + code);
                }
                super.showGlyph(matrix, font, code, displacement);
            }
        };
        try (PDDocument document = Loader.loadPDF(PDF)) {
            every.getText(document);
        }
        assertEquals(List.of(), missing);
        assertTrue(drawn.get() > 10_000, drawn + " signs");
    }

    @Test
    void its_text_can_be_taken_out_again() throws IOException {
        String text = text(PDF);
        String first =
                "Rings \u03BC \u00B2 \u00B3 \u00B7 \u20AC \u2264 \u2265 \u00B0 \u2212 \u00D7 \u00F7 \u221A \u03C0 \u0394 \u03B3"
                        + " \u03C1 \u03B8 \u221E \u2192 \u2080 10^\u22126 1 000 1 000 \u00B0C [U+0639] end";
        assertTrue(text.contains(first.replace(" ", "")), text.substring(0, 300));
        Answer.Candidate line = REPORT.chosen().orElseThrow();
        List<String> expected = new ArrayList<>(
                List.of(REPORT.hash(), REPORT.answer().headline().sentence()));
        line.cautions().forEach(c -> expected.add(c.text()));
        REPORT.answer().cautions().forEach(c -> expected.add(c.text()));
        line.design().orElseThrow().figures().forEach(f -> expected.add(f.text()));
        REPORT.answer().inputs().forEach(i -> expected.add(i.value()));
        for (String part : expected) {
            assertTrue(text.contains(squeezed(part)), part);
        }
    }

    @Test
    void every_page_carries_title_answer_and_its_number() throws IOException {
        try (PDDocument document = Loader.loadPDF(PDF)) {
            int pages = document.getNumberOfPages();
            assertTrue(pages >= 8 && pages <= 40, pages + " pages");
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                String text = squeezed(one.getText(document));
                assertTrue(text.contains("page" + page + "of" + pages), text);
                assertTrue(text.contains("answer" + Numerals.shortHash(REPORT.hash())), text);
                assertTrue(text.contains("Rings\u03BC"), text);
            }
        }
    }

    @Test
    void it_has_title_language_date_and_a_bookmark_for_each_section() throws IOException {
        try (PDDocument document = Loader.loadPDF(PDF)) {
            assertEquals(
                    ReportHtml.title(REPORT), document.getDocumentInformation().getTitle());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals(
                    REPORT.answer().request().asOf(),
                    document.getDocumentInformation()
                            .getCreationDate()
                            .toInstant()
                            .toString()
                            .substring(0, 10));
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
            }
            List<String> sections = new ArrayList<>();
            for (Section section : Section.values()) {
                sections.add(section.title());
            }
            assertEquals(sections, titles);
        }
    }

    @Test
    void a_very_long_word_and_markup_in_a_title_break_nothing() throws IOException {
        String word = "Wxyz".repeat(200);
        Report report = Answers.of(
                "<b>" + word + "</b> & \u0007", "", Answers.plain("steel-clips").answer());
        String text = text(new ReportPdf().write(report));
        assertTrue(text.contains("<b>" + word + "</b>&[U+0007]"), text.substring(0, 1200));
    }

    /** Style, pictures and drawings are the ways in which a page can ask for something. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<img src=\"%s/a.png\" alt=\"\" />",
                "<object type=\"image/png\" data=\"%s/a.png\"></object>",
                "<p style=\"background-image: url('%s/a.png')\">x</p>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"9\" height=\"9\">"
                        + "<image xlink:href=\"%s/a.png\" width=\"9\" height=\"9\" /></svg>"
            })
    void the_renderer_asks_nobody_for_anything(String markup) throws IOException {
        AtomicInteger asked = new AtomicInteger();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            asked.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
        try {
            String address = "http://127.0.0.1:" + server.getAddress().getPort();
            String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>x</title>"
                    + "<link rel=\"stylesheet\" href=\"" + address + "/a.css\" />"
                    + "<style>@import url(" + address + "/b.css); body { font-family: Literata; }</style></head><body>"
                    + markup.formatted(address) + "<p>still here</p></body></html>";
            String text = text(new ReportPdf().draw(REPORT, page));
            assertTrue(text.contains("stillhere"), text);
            assertEquals(0, asked.get());
        } finally {
            server.stop(0);
        }
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return squeezed(new PDFTextStripper().getText(document));
        }
    }

    /** Without spaces: where lines end is no matter of content. */
    private static String squeezed(String text) {
        return text.replace('\u00B5', '\u03BC').replaceAll("[\\s\u00A0\u2009\u202F]+", "");
    }
}

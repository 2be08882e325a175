package org.washwright.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The report as PDF. It is drawn from the XHTML alone, with fonts that come with the program and are embedded; whatever else
 * a page might ask for is refused. Dates and document id come from the answer, so that the same answer gives the same bytes.
 */
final class ReportPdf {

    static {
        // A report is no place for a log, and the command line writes its own.
        XRLog.setLoggingEnabled(false);
        // Fonts of the machine are neither looked for nor used: the same answer looks the same everywhere.
        FontMappers.set(new BundledFontMapper());
    }

    byte[] write(Report report) {
        return draw(report, ReportHtml.paper(report));
    }

    /** Draws a page; what describes the document comes from the report. */
    byte[] draw(Report report, String xhtml) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            try (PdfBoxRenderer renderer = renderer(report, xhtml, document)) {
                renderer.createPDFKeepOpen();
                describe(report, document);
                document.save(out);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory", e);
        }
    }

    private static PdfBoxRenderer renderer(Report report, String xhtml, PDDocument document) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        for (Fonts.Face face : Fonts.ALL) {
            PDFont font = PDType0Font.load(document, Fonts.parsed(face), true);
            builder.useFont(new PDFontSupplier(font), face.family(), face.weight(), FontStyle.NORMAL, true);
        }
        // Asked before an address is even resolved: nothing is read but what stands in the text.
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        return builder.usePdfUaAccessibility(true)
                .useSVGDrawer(new BatikSVGDrawer())
                .withHtmlContent(xhtml, null)
                .withProducer(report.answer().request().program())
                .usePDDocument(document)
                .buildPdfRenderer();
    }

    private static void describe(Report report, PDDocument document) {
        PDDocumentInformation information = document.getDocumentInformation();
        Calendar date = date(report.answer().request().asOf());
        information.setTitle(ReportHtml.title(report));
        information.setSubject("Answer " + report.hash());
        information.setCreator(report.answer().request().program());
        information.setCreationDate(date);
        information.setModificationDate(date);
        document.setDocumentId(Long.parseUnsignedLong(report.hash().substring(0, 15), 16));
        document.getDocumentCatalog().setLanguage("en");
    }

    /** The date for which law and prices were read: the only one that the answer holds. */
    private static Calendar date(String asOf) {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), java.util.Locale.ROOT);
        date.setTimeInMillis(
                LocalDate.parse(asOf).atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli());
        return date;
    }
}

package org.washwright.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/**
 * What a workbook holds besides the cells of one sheet: macros, links, hidden or further sheets, merged cells. A reader of cells
 * passes over it, and somebody who looked at the sheet would believe something else than what was read. Called for workbooks
 * that the guard let pass.
 */
final class WorkbookParts {

    private static final int LETTERS = 26;
    private static final List<String> STRANGE =
            List.of("vbaproject", "externallinks/", "embeddings/", "activex/", "ctrlprops/", "macrosheets/");

    private final String name;
    private final Diagnostics diagnostics;
    private int sheets;

    private WorkbookParts(String name, Diagnostics diagnostics) {
        this.name = name;
        this.diagnostics = diagnostics;
    }

    /** True when there is nothing but one sheet of plain cells; else all reasons are in {@code diagnostics}. */
    static boolean pass(String name, byte[] workbook, Diagnostics diagnostics) {
        WorkbookParts parts = new WorkbookParts(name, diagnostics);
        try (ZipFile zip = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                .get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                parts.part(zip, entry);
            }
        } catch (IOException | XMLStreamException e) {
            diagnostics.add(Message.BROKEN_WORKBOOK, Place.ofFile(name), "", "its text is not well-formed");
        }
        return !diagnostics.hasErrors();
    }

    private void part(ZipFile zip, ZipArchiveEntry entry) throws IOException, XMLStreamException {
        String part = entry.getName().toLowerCase(Locale.ROOT);
        STRANGE.stream()
                .filter(part::contains)
                .findFirst()
                .ifPresent(strange -> more(Place.ofFile(name), entry.getName(), "a macro, link or embedded object"));
        boolean sheet = part.startsWith("xl/worksheets/") && part.endsWith(".xml");
        if (sheet || part.equals("xl/workbook.xml")) {
            try (InputStream in = zip.getInputStream(entry)) {
                XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
                factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
                factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
                elements(factory.createXMLStreamReader(new ByteArrayInputStream(in.readAllBytes())));
            }
        }
    }

    private void elements(XMLStreamReader reader) throws XMLStreamException {
        String cell = "";
        while (reader.hasNext()) {
            if (reader.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            String ref = String.valueOf(reader.getAttributeValue(null, "ref"));
            switch (reader.getLocalName()) {
                case "c" -> cell = String.valueOf(reader.getAttributeValue(null, "r"));
                case "f" -> formula(cell);
                case "mergeCell" -> more(at(ref), ref, "merged cells");
                case "hyperlink" -> more(at(ref), ref, "a link");
                case "sheet" -> sheet(reader);
                default -> {
                    // everything else says how cells look
                }
            }
        }
    }

    private void formula(String cell) {
        diagnostics.add(Message.CELL_FORMULA, at(cell), "=");
    }

    private void sheet(XMLStreamReader reader) {
        String title = String.valueOf(reader.getAttributeValue(null, "name"));
        String state = reader.getAttributeValue(null, "state");
        if (state != null && !state.equals("visible")) {
            more(Place.ofFile(name), title, "a hidden sheet");
        } else if (++sheets > 1) {
            more(Place.ofFile(name), title, "a second sheet");
        }
    }

    private Place at(String ref) {
        return Place.ofFile(name + ", cell " + ref.split(":", 2)[0]);
    }

    private void more(Place place, String value, String what) {
        diagnostics.add(Message.WORKBOOK_MORE, place, value, what);
    }

    /** The letters of a column, from 0. */
    static String letters(int column) {
        return column < LETTERS
                ? String.valueOf((char) ('A' + column))
                : letters(column / LETTERS - 1) + (char) ('A' + column % LETTERS);
    }
}

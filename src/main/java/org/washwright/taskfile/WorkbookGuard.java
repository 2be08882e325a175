package org.washwright.taskfile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.List;
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
 * Looks a workbook over before it is read: how much it unfolds to, how many rows and cells it has, whether its text
 * declares anything. What passes costs a reader little, whoever made it.
 */
public final class WorkbookGuard {

    static final int MOST_BYTES = 20_000_000;
    static final int MOST_PARTS = 200;
    static final int MOST_ROWS = 2_000;
    static final int MOST_CELLS = 50_000;

    /** Columns to CV: more than any sheet of a task has. */
    private static final int MOST_COLUMNS = 100;

    private final String name;
    private final Diagnostics diagnostics;
    private long bytes;
    private int rows;
    private int cells;

    private WorkbookGuard(String name, Diagnostics diagnostics) {
        this.name = name;
        this.diagnostics = diagnostics;
    }

    /**
     * Looks a workbook over.
     *
     * @param name what it is called in messages
     * @return true when it may be read; else the reason is in {@code diagnostics}
     */
    public static boolean passes(String name, byte[] workbook, Diagnostics diagnostics) {
        WorkbookGuard guard = new WorkbookGuard(name, diagnostics);
        // Parts are found the way the reader of workbooks finds them, so that both see the same ones.
        try (ZipFile zip = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                .get()) {
            guard.parts(zip);
        } catch (IOException | IllegalArgumentException e) {
            guard.broken("no zip archive that can be opened");
        } catch (XMLStreamException e) {
            guard.broken("its text is not well-formed");
        }
        return !diagnostics.hasErrors();
    }

    private void parts(ZipFile zip) throws IOException, XMLStreamException {
        List<ZipArchiveEntry> parts = Collections.list(zip.getEntries());
        if (parts.size() > MOST_PARTS) {
            tooLarge(parts.size() + " parts", MOST_PARTS + " parts of a workbook");
        }
        for (ZipArchiveEntry entry : parts) {
            if (diagnostics.hasErrors()) {
                return;
            }
            try (InputStream in = zip.getInputStream(entry)) {
                byte[] part = in.readNBytes((int) (MOST_BYTES - bytes) + 1);
                bytes += part.length;
                if (bytes > MOST_BYTES) {
                    tooLarge("more than " + MOST_BYTES + " bytes", MOST_BYTES + " bytes of an unfolded workbook");
                } else if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
                    text(part);
                }
            }
        }
        if (zip.getEntry("xl/workbook.xml") == null) {
            broken("it holds no sheets");
        }
    }

    private void text(byte[] part) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(part));
        while (reader.hasNext() && !diagnostics.hasErrors()) {
            int event = reader.next();
            if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                broken("its text declares entities");
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                element(reader);
            }
        }
    }

    private void element(XMLStreamReader reader) {
        if (reader.getLocalName().equals("row") && ++rows > MOST_ROWS) {
            tooLarge("more than " + MOST_ROWS + " rows", MOST_ROWS + " rows of a workbook");
        } else if (reader.getLocalName().equals("c")) {
            if (++cells > MOST_CELLS) {
                tooLarge("more than " + MOST_CELLS + " cells", MOST_CELLS + " cells of a workbook");
            }
            String address = reader.getAttributeValue(null, "r");
            if (address != null && !isNear(address)) {
                tooLarge("cell " + address, MOST_COLUMNS + " columns of a sheet");
            }
        }
    }

    /** True for a cell within the columns and rows that a task can need. */
    private static boolean isNear(String address) {
        if (!address.matches("[A-Z]{1,2}[0-9]{1,7}")) {
            return false;
        }
        int column = 0;
        for (char c : address.replaceAll("[0-9]", "").toCharArray()) {
            column = column * 26 + (c - 'A' + 1);
        }
        return column <= MOST_COLUMNS;
    }

    private void tooLarge(String found, String allowed) {
        diagnostics.add(Message.TOO_LARGE, Place.ofFile(name), found, allowed);
    }

    private void broken(String why) {
        diagnostics.add(Message.BROKEN_WORKBOOK, Place.ofFile(name), "", why);
    }
}

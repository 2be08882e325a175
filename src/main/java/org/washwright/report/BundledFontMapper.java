package org.washwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Stands in for the search through all fonts of a machine, which takes seconds, leaves a file in the home folder and would
 * make a document depend on where it was made. Nothing is drawn with what it gives: every face of a report is bundled. None is
 * called a substitute, or every document would be logged as having one.
 */
final class BundledFontMapper implements FontMapper {

    private final TrueTypeFont font;

    BundledFontMapper() {
        try {
            font = Fonts.parsed(Fonts.ALL.get(0));
        } catch (IOException e) {
            throw new UncheckedIOException("a bundled font", e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, font, false);
    }
}

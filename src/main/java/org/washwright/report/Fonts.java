package org.washwright.report;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The fonts that come with the program: both under the SIL Open Font Licence, whose texts lie beside them. */
final class Fonts {

    static final String SANS = "Atkinson Hyperlegible Next";
    static final String SERIF = "Literata";

    /** One font file and what style sheets call it. */
    record Face(String resource, String family, int weight) {}

    static final List<Face> ALL = List.of(
            new Face("fonts/AtkinsonHyperlegibleNext_400Regular.ttf", SANS, 400),
            new Face("fonts/AtkinsonHyperlegibleNext_700Bold.ttf", SANS, 700),
            new Face("fonts/Literata_600SemiBold.ttf", SERIF, 600));

    private Fonts() {}

    /** A font read. Ligatures are left out: what is copied out of the PDF must be the letters that were put in. */
    static TrueTypeFont parsed(Face face) throws IOException {
        try (InputStream in = Fonts.class.getResourceAsStream(face.resource())) {
            if (in == null) {
                throw new IllegalStateException("the program came without " + face.resource());
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            font.setEnableGsub(false);
            return font;
        }
    }
}

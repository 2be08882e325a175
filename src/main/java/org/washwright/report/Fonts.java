package org.washwright.report;

import java.io.InputStream;
import java.util.List;

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

    /** The bytes of a font. */
    static InputStream open(String resource) {
        InputStream in = Fonts.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException("the program came without " + resource);
        }
        return in;
    }
}

package org.washwright.document;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads one YAML or JSON document into {@link Node}s. Strict: one document, unique keys, no anchors, aliases or tags, depth
 * at most {@value #DEPTH}. Values stay text; what they mean is for the caller to say.
 */
public final class DocumentReader {

    /** Deepest nesting read. */
    public static final int DEPTH = 40;

    private DocumentReader() {}

    /**
     * Reads bytes of UTF-8 text; a document that starts with an opening brace or bracket is read as JSON first.
     *
     * @return the document, or empty when it can't be read at all; the reasons are in {@code diagnostics}
     */
    public static Optional<Node> read(String file, byte[] bytes, Diagnostics diagnostics) {
        Optional<String> text = decode(file, bytes, diagnostics);
        return text.flatMap(t -> read(file, t, diagnostics));
    }

    /** The same for text. */
    public static Optional<Node> read(String file, String text, Diagnostics diagnostics) {
        String start = text.stripLeading();
        boolean json = start.startsWith("{")
                || start.startsWith("[")
                || file.toLowerCase(Locale.ROOT).endsWith(".json");
        return json ? new JsonDocument(file, diagnostics).read(text) : new YamlDocument(file, diagnostics).read(text);
    }

    /** Decodes UTF-8, with an error that names the place of the first bad byte. */
    public static Optional<String> decode(String file, byte[] bytes, Diagnostics diagnostics) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            diagnostics.add(
                    Message.NOT_UTF8,
                    new SourceText(file, text).at(text.length()),
                    String.format(Locale.ROOT, "byte %02X", bytes[in.position()]));
            return Optional.empty();
        }
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }
}

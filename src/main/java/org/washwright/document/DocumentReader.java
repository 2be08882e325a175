package org.washwright.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;

/**
 * Reads one YAML or JSON document into {@link Node}s. Strict: one document, unique keys, no anchors, aliases or tags, depth
 * at most {@value #DEPTH}. Values stay text; what they mean is for the caller to say.
 */
public final class DocumentReader {

    /** Deepest nesting read. */
    public static final int DEPTH = 40;

    private final String file;
    private final Diagnostics diagnostics;

    private DocumentReader(String file, Diagnostics diagnostics) {
        this.file = file;
        this.diagnostics = diagnostics;
    }

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
        DocumentReader reader = new DocumentReader(file, diagnostics);
        String start = text.stripLeading();
        boolean json = start.startsWith("{")
                || start.startsWith("[")
                || file.toLowerCase(Locale.ROOT).endsWith(".json");
        return json ? reader.readJson(text) : reader.readYaml(text);
    }

    /** Decodes UTF-8, with an error that names the place of the first bad byte. */
    public static Optional<String> decode(String file, byte[] bytes, Diagnostics diagnostics) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            diagnostics.add(Message.NOT_UTF8, Place.ofFile(file), "");
            return Optional.empty();
        }
    }

    // ---- YAML ----

    private Optional<Node> readYaml(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        try {
            Iterator<Event> events =
                    new Yaml(options).parse(new StringReader(text)).iterator();
            Node root = null;
            while (events.hasNext()) {
                Event event = events.next();
                if (event instanceof DocumentStartEvent) {
                    if (root != null) {
                        diagnostics.add(Message.SEVERAL_DOCUMENTS, at(event.getStartMark(), ""), "");
                        return Optional.empty();
                    }
                    root = yamlNode(events.next(), events, "", 0);
                }
            }
            if (root == null) {
                diagnostics.add(Message.EMPTY_DOCUMENT, Place.ofFile(file), "");
            }
            return Optional.ofNullable(root);
        } catch (MarkedYAMLException e) {
            diagnostics.add(Message.BROKEN_YAML, at(e.getProblemMark(), ""), "", String.valueOf(e.getProblem()));
        } catch (TooDeep e) {
            diagnostics.add(Message.TOO_DEEP, e.place, "", DEPTH);
        } catch (YAMLException e) {
            diagnostics.add(
                    Message.BROKEN_YAML,
                    Place.ofFile(file),
                    "",
                    String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        }
        return Optional.empty();
    }

    private Node yamlNode(Event event, Iterator<Event> events, String pointer, int depth) {
        Place place = at(event.getStartMark(), pointer);
        if (depth > DEPTH) {
            throw new TooDeep(place);
        }
        if (event instanceof NodeEvent n && (n instanceof AliasEvent || n.getAnchor() != null)) {
            diagnostics.add(Message.ALIAS, place, n.getAnchor());
        }
        if (event instanceof MappingStartEvent m) {
            checkTag(m.getTag(), place);
            return yamlMap(events, place, depth);
        }
        if (event instanceof SequenceStartEvent s) {
            checkTag(s.getTag(), place);
            List<Node> items = new ArrayList<>();
            for (Event e = events.next(); !(e instanceof SequenceEndEvent); e = events.next()) {
                items.add(yamlNode(e, events, pointer + "/" + items.size(), depth + 1));
            }
            return new Node.ListNode(place, List.copyOf(items));
        }
        if (event instanceof ScalarEvent s) {
            checkTag(s.getTag(), place);
            return new Node.ScalarNode(place, s.getValue(), s.getScalarStyle() != DumperOptions.ScalarStyle.PLAIN);
        }
        return new Node.ScalarNode(place, "", false);
    }

    private Node yamlMap(Iterator<Event> events, Place place, int depth) {
        List<Node.Entry> entries = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Event e = events.next(); !(e instanceof MappingEndEvent); e = events.next()) {
            Node keyNode = yamlNode(e, events, place.pointer(), depth + 1);
            String key = keyNode instanceof Node.ScalarNode s ? s.text() : "";
            if (!(keyNode instanceof Node.ScalarNode)) {
                diagnostics.add(Message.KEY_NOT_TEXT, keyNode.place(), keyNode.describe());
            }
            Place keyPlace =
                    place.child(key, keyNode.place().line(), keyNode.place().column());
            Node value = yamlNode(events.next(), events, keyPlace.pointer(), depth + 1);
            if (keys.add(key)) {
                entries.add(new Node.Entry(key, keyPlace, value));
            } else {
                diagnostics.add(Message.DUPLICATE_KEY, keyPlace, key);
            }
        }
        return new Node.MapNode(place, List.copyOf(entries));
    }

    private void checkTag(String tag, Place place) {
        if (tag != null && !tag.equals("!")) {
            diagnostics.add(Message.TAG, place, tag);
        }
    }

    private Place at(Mark mark, String pointer) {
        return mark == null
                ? new Place(file, 0, 0, pointer)
                : new Place(file, mark.getLine() + 1, mark.getColumn() + 1, pointer);
    }

    // ---- JSON ----

    private Optional<Node> readJson(String text) {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEPTH + 2)
                        .maxStringLength(Integer.MAX_VALUE)
                        .maxNumberLength(1000)
                        .build())
                .build();
        try (JsonParser parser = factory.createParser(text)) {
            JsonToken first = parser.nextToken();
            if (first == null) {
                diagnostics.add(Message.EMPTY_DOCUMENT, Place.ofFile(file), "");
                return Optional.empty();
            }
            Node root = jsonNode(parser, here(parser.currentTokenLocation(), ""));
            if (parser.nextToken() != null) {
                diagnostics.add(Message.SEVERAL_DOCUMENTS, here(parser.currentTokenLocation(), ""), "");
                return Optional.empty();
            }
            return Optional.of(root);
        } catch (JsonProcessingException e) {
            diagnostics.add(
                    Message.BROKEN_JSON,
                    here(e.getLocation(), ""),
                    "",
                    e.getOriginalMessage().lines().findFirst().orElse(""));
        } catch (IOException e) {
            diagnostics.add(Message.BROKEN_JSON, Place.ofFile(file), "", String.valueOf(e.getMessage()));
        }
        return Optional.empty();
    }

    private Node jsonNode(JsonParser parser, Place place) throws IOException {
        switch (parser.currentToken()) {
            case START_OBJECT -> {
                List<Node.Entry> entries = new ArrayList<>();
                Set<String> keys = new HashSet<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    JsonLocation location = parser.currentTokenLocation();
                    Place keyPlace = place.child(key, location.getLineNr(), location.getColumnNr());
                    parser.nextToken();
                    Node value = jsonNode(parser, here(parser.currentTokenLocation(), keyPlace.pointer()));
                    if (keys.add(key)) {
                        entries.add(new Node.Entry(key, keyPlace, value));
                    } else {
                        diagnostics.add(Message.DUPLICATE_KEY, keyPlace, key);
                    }
                }
                return new Node.MapNode(place, List.copyOf(entries));
            }
            case START_ARRAY -> {
                List<Node> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(jsonNode(
                            parser, here(parser.currentTokenLocation(), place.pointer() + "/" + items.size())));
                }
                return new Node.ListNode(place, List.copyOf(items));
            }
            case VALUE_NULL -> {
                return new Node.ScalarNode(place, "unknown", false);
            }
            case VALUE_STRING -> {
                // JSON has no other way to write a quantity or a term, so its strings count as plain values.
                return new Node.ScalarNode(place, parser.getText(), false);
            }
            default -> {
                return new Node.ScalarNode(place, parser.getText(), false);
            }
        }
    }

    private Place here(JsonLocation location, String pointer) {
        return location == null
                ? new Place(file, 0, 0, pointer)
                : new Place(file, location.getLineNr(), location.getColumnNr(), pointer);
    }

    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Place place;

        TooDeep(Place place) {
            super("nested too deeply", null, false, false);
            this.place = place;
        }
    }
}

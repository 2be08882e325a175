package org.washwright.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one JSON document token by token, with the place of every value. */
final class JsonDocument {

    private final String file;
    private final Diagnostics diagnostics;
    private final Growth growth = new Growth();
    private JsonLocation last;

    JsonDocument(String file, Diagnostics diagnostics) {
        this.file = file;
        this.diagnostics = diagnostics;
    }

    Optional<Node> read(String text) {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DocumentReader.DEPTH + 2)
                        .maxStringLength(Integer.MAX_VALUE)
                        .maxNumberLength(1000)
                        .build())
                .build();
        SourceText source = new SourceText(file, text);
        try (JsonParser parser = factory.createParser(text)) {
            JsonToken first = parser.nextToken();
            if (first == null) {
                diagnostics.add(Message.EMPTY_DOCUMENT, Place.ofFile(file), "");
                return Optional.empty();
            }
            Node root = jsonNode(parser, here(parser.currentTokenLocation(), ""));
            if (parser.nextToken() != null) {
                diagnostics.add(Message.SEVERAL_DOCUMENTS, here(parser.currentTokenLocation(), ""), "}");
                return Optional.empty();
            }
            return Optional.of(root);
        } catch (JsonProcessingException e) {
            JsonLocation where = e.getLocation() == null ? last : e.getLocation();
            Place place = where == null ? source.at(1, 1) : source.at(where.getLineNr(), where.getColumnNr());
            diagnostics.add(
                    Message.BROKEN_JSON,
                    place,
                    source.line(place.line()),
                    String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse(""));
        } catch (Growth.TooMuch e) {
            e.tell(diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.BROKEN_JSON, Place.ofFile(file), "", String.valueOf(e.getMessage()));
        }
        return Optional.empty();
    }

    private Node jsonNode(JsonParser parser, Place place) throws IOException {
        growth.count(place);
        last = parser.currentTokenLocation();
        switch (parser.currentToken()) {
            case START_OBJECT -> {
                List<Node.Entry> entries = new ArrayList<>();
                Set<String> keys = new HashSet<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = HiddenCharacters.key(
                            parser.currentName(), here(parser.currentTokenLocation(), place.pointer()), diagnostics);
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
                return new Node.ScalarNode(place, words(parser.getText(), place), false);
            }
            default -> {
                return new Node.ScalarNode(place, parser.getText(), false);
            }
        }
    }

    private String words(String text, Place place) {
        return HiddenCharacters.none(place, text, diagnostics) ? text : "";
    }

    private Place here(JsonLocation location, String pointer) {
        return location == null
                ? new Place(file, 0, 0, pointer)
                : new Place(file, location.getLineNr(), location.getColumnNr(), pointer);
    }
}

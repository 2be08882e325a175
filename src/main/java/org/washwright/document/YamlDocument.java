package org.washwright.document;

import java.io.StringReader;
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
import org.yaml.snakeyaml.reader.ReaderException;

/** Reads one YAML document event by event; nothing of YAML's own typing, tags or aliases is let in. */
final class YamlDocument {

    /** The parser copies what it has of a line again and again, so that a line of megabytes would keep it for hours. */
    private static final int LONGEST_LINE = 300_000;

    private final String file;
    private final Diagnostics diagnostics;
    private final Growth growth = new Growth();
    private int line = 1;

    YamlDocument(String file, Diagnostics diagnostics) {
        this.file = file;
        this.diagnostics = diagnostics;
    }

    Optional<Node> read(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        SourceText source = new SourceText(file, text);
        Optional<Place> endless = source.longerThan(LONGEST_LINE);
        if (endless.isPresent()) {
            diagnostics.add(
                    Message.TOO_LARGE, endless.get(), "a line so long", LONGEST_LINE + " characters of one line");
            return Optional.empty();
        }
        try {
            Iterator<Event> events =
                    new Yaml(options).parse(new StringReader(text)).iterator();
            Node root = null;
            while (events.hasNext()) {
                Event event = events.next();
                if (event instanceof DocumentStartEvent) {
                    if (root != null) {
                        diagnostics.add(Message.SEVERAL_DOCUMENTS, at(event.getStartMark(), ""), "---");
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
            Mark mark = e.getProblemMark();
            broken(
                    mark == null ? source.at(1, 1) : source.at(mark.getLine() + 1, mark.getColumn() + 1),
                    source,
                    e.getProblem());
        } catch (TooDeep e) {
            diagnostics.add(Message.TOO_DEEP, e.place, source.line(e.place.line()), DocumentReader.DEPTH);
        } catch (Growth.TooMuch e) {
            e.tell(diagnostics);
        } catch (ReaderException e) {
            int offset = text.offsetByCodePoints(0, Math.min(e.getPosition(), text.codePointCount(0, text.length())));
            diagnostics.add(
                    Message.HIDDEN_CHARACTER,
                    source.at(offset),
                    String.format(Locale.ROOT, "U+%04X", e.getCodePoint()));
        } catch (YAMLException | IllegalArgumentException e) {
            // Some halves of escapes reach the parser's number reading, which knows neither YAML nor places.
            broken(
                    source.at(line, 1),
                    source,
                    String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        }
        return Optional.empty();
    }

    private void broken(Place place, SourceText source, String why) {
        diagnostics.add(Message.BROKEN_YAML, place, source.line(place.line()), String.valueOf(why));
    }

    private Node yamlNode(Event event, Iterator<Event> events, String pointer, int depth) {
        Place place = at(event.getStartMark(), pointer);
        growth.count(place);
        line = place.line();
        if (depth > DocumentReader.DEPTH) {
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
            String words = HiddenCharacters.none(place, s.getValue(), diagnostics) ? s.getValue() : "";
            return new Node.ScalarNode(place, words, s.getScalarStyle() != DumperOptions.ScalarStyle.PLAIN);
        }
        return new Node.ScalarNode(place, "", false);
    }

    private Node yamlMap(Iterator<Event> events, Place place, int depth) {
        List<Node.Entry> entries = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Event e = events.next(); !(e instanceof MappingEndEvent); e = events.next()) {
            Node keyNode = yamlNode(e, events, place.pointer(), depth + 1);
            String key = keyNode instanceof Node.ScalarNode s
                    ? HiddenCharacters.key(s.text(), keyNode.place(), diagnostics)
                    : "";
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

    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Place place;

        TooDeep(Place place) {
            super("nested too deeply", null, false, false);
            this.place = place;
        }
    }
}

package org.washwright.document.edit;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;

/** Finds where every value of a document that was read without error stands in its text. */
final class Spots {

    private final String text;
    private final int[] offsets;
    private Iterator<Event> events;

    private Spots(String text) {
        this.text = text;
        // Marks count characters of Unicode, offsets in Java those of UTF-16.
        boolean wide = text.length() != text.codePointCount(0, text.length());
        this.offsets = wide ? offsets(text) : new int[0];
    }

    static Spot of(String text) {
        Spots spots = new Spots(text);
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        spots.events = new Yaml(options).parse(new StringReader(text)).iterator();
        while (!(spots.events.next() instanceof DocumentStartEvent)) {
            // what stands before a document is not part of it
        }
        return spots.spot(spots.events.next());
    }

    private Spot spot(Event event) {
        int start = at(event.getStartMark());
        if (event instanceof MappingStartEvent map) {
            return map(start, map.isFlow());
        }
        if (event instanceof SequenceStartEvent list) {
            return list(start, list.isFlow());
        }
        ScalarStyle style = event instanceof ScalarEvent scalar ? scalar.getScalarStyle() : ScalarStyle.PLAIN;
        int end = at(event.getEndMark());
        return new Spot(Spot.Kind.ONE, start, trimmed(start, end), false, style, List.of());
    }

    private Spot map(int start, boolean flow) {
        List<Spot.Member> members = new ArrayList<>();
        Event event = events.next();
        for (; !(event instanceof MappingEndEvent); event = events.next()) {
            Spot key = spot(event);
            String name = event instanceof ScalarEvent scalar ? scalar.getValue() : "";
            members.add(new Spot.Member(name, key.start(), key.end(), spot(events.next())));
        }
        return new Spot(Spot.Kind.NAMED, start, end(event, flow, start, members), flow, ScalarStyle.PLAIN, members);
    }

    private Spot list(int start, boolean flow) {
        List<Spot.Member> members = new ArrayList<>();
        Event event = events.next();
        for (; !(event instanceof SequenceEndEvent); event = events.next()) {
            Spot value = spot(event);
            int from = flow ? value.start() : dash(value.start());
            members.add(new Spot.Member("", from, from, value));
        }
        return new Spot(Spot.Kind.MANY, start, end(event, flow, start, members), flow, ScalarStyle.PLAIN, members);
    }

    /** A block ends with its last member; the parser only notices when it comes to what follows. */
    private int end(Event event, boolean flow, int start, List<Spot.Member> members) {
        if (flow) {
            return at(event.getEndMark());
        }
        return members.isEmpty() ? start : members.get(members.size() - 1).end();
    }

    /** Where the dash before an item stands; -1 when something else stands between. */
    private int dash(int start) {
        int at = start - 1;
        while (at >= 0 && Character.isWhitespace(text.charAt(at))) {
            at--;
        }
        return at >= 0 && text.charAt(at) == '-' ? at : -1;
    }

    private int trimmed(int start, int end) {
        int at = end;
        while (at > start && Character.isWhitespace(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    private int at(Mark mark) {
        return offsets.length == 0 ? mark.getIndex() : offsets[mark.getIndex()];
    }

    private static int[] offsets(String text) {
        int[] out = new int[text.codePointCount(0, text.length()) + 2];
        int at = 0;
        for (int i = 0; i < out.length; i++) {
            out[i] = at;
            at += at < text.length() ? Character.charCount(text.codePointAt(at)) : 0;
        }
        return out;
    }
}

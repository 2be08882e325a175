package org.washwright.document.edit;

import java.util.ArrayList;
import java.util.List;
import org.washwright.document.Place;

/** Takes members out of a text and moves them: whole lines where they stand on lines of their own, else what lies between commas. */
final class Cut {

    private final String text;
    private final String newline;

    Cut(String text, String newline) {
        this.text = text;
        this.newline = newline;
    }

    String without(Spot parent, int at, String pointer, Place place) {
        List<Spot.Member> members = parent.members();
        Spot.Member member = members.get(at);
        if (members.size() == 1) {
            return emptied(parent);
        }
        if (parent.flow()) {
            return at > 0
                    ? replaced(members.get(at - 1).end(), member.end(), "")
                    : replaced(member.from(), members.get(1).from(), "");
        }
        if (member.from() < 0) {
            throw RefusedEdit.tangled(place, pointer);
        }
        if (isOnLinesOfItsOwn(member)) {
            int from = lineStart(member.from());
            int to = nextLine(member.end());
            // The last line of a text may have no end; then the one before it has one too many.
            return to == text.length() && !text.endsWith("\n")
                    ? replaced(Math.max(0, from - newline.length()), to, "")
                    : replaced(from, to, "");
        }
        return replaced(member.from(), members.get(at + 1).from(), "");
    }

    /** A block without members would be no block. */
    private String emptied(Spot parent) {
        String none = parent.kind() == Spot.Kind.NAMED ? "{}" : "[]";
        if (parent.flow()) {
            return replaced(parent.start(), parent.end(), none);
        }
        int before = parent.start();
        while (before > 0 && Character.isWhitespace(text.charAt(before - 1))) {
            before--;
        }
        boolean behindKey = before > 0 && text.charAt(before - 1) == ':';
        return behindKey ? replaced(before, parent.end(), " " + none) : replaced(parent.start(), parent.end(), none);
    }

    String moved(Spot parent, int at, int to) {
        List<Spot.Member> members = parent.members();
        boolean lines = !parent.flow() && members.stream().allMatch(m -> m.from() >= 0 && isOnLinesOfItsOwn(m));
        List<int[]> slots = new ArrayList<>();
        for (Spot.Member m : members) {
            slots.add(
                    lines ? new int[] {lineStart(m.from()), lineEnd(m.end())} : new int[] {start(parent, m), m.end()});
        }
        List<String> parts = new ArrayList<>();
        slots.forEach(s -> parts.add(text.substring(s[0], s[1])));
        parts.add(to, parts.remove(at));
        StringBuilder out = new StringBuilder();
        int done = 0;
        for (int i = 0; i < slots.size(); i++) {
            out.append(text, done, slots.get(i)[0]).append(parts.get(i));
            done = slots.get(i)[1];
        }
        return out.append(text.substring(done)).toString();
    }

    private static int start(Spot parent, Spot.Member member) {
        return parent.kind() == Spot.Kind.MANY ? member.value().start() : member.from();
    }

    private boolean isOnLinesOfItsOwn(Spot.Member member) {
        return text.substring(lineStart(member.from()), member.from()).isBlank();
    }

    private int lineStart(int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    private int lineEnd(int at) {
        int end = text.indexOf('\n', at);
        int before = end < 0 ? text.length() : end;
        return before > at && text.charAt(before - 1) == '\r' ? before - 1 : before;
    }

    private int nextLine(int at) {
        int end = text.indexOf('\n', at);
        return end < 0 ? text.length() : end + 1;
    }

    private String replaced(int from, int to, String with) {
        return text.substring(0, from) + with + text.substring(to);
    }
}

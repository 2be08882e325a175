package org.washwright.document.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.document.SourceText;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;

/**
 * Changes one value of a YAML text. Comments, order, quotes and blank lines outside the value stay byte for byte; what is
 * added is written as its neighbours are. Every change is read back: a text that then says anything but what was meant is
 * never handed out.
 */
public final class YamlEdits {

    private final String file;
    private final String text;
    private final String newline;
    private final Written written;

    private YamlEdits(String file, String text) {
        this.file = file;
        this.text = text;
        this.newline = text.contains("\r\n") ? "\r\n" : "\n";
        this.written = new Written(newline);
    }

    /**
     * The text after some changes, one after the other.
     *
     * @param file name of the file, for messages
     * @throws RefusedEdit when the text has errors, a pointer leads nowhere, a value can't be written, or the change would
     *     touch more than it names; the reasons have places
     */
    public static String apply(String file, String text, List<Change> changes) {
        String now = text;
        for (Change change : changes) {
            now = apply(file, now, change);
        }
        return now;
    }

    /** The same for one change. */
    public static String apply(String file, String text, Change change) {
        Data meant = DataChanges.apply(read(file, text), change);
        String changed = new YamlEdits(file, text).changed(change);
        if (!read(file, changed).equals(meant)) {
            throw RefusedEdit.tangled(new SourceText(file, text).at(0), change.pointer());
        }
        return changed;
    }

    /**
     * What a text says.
     *
     * @throws RefusedEdit when it has errors
     */
    public static Data read(String file, String text) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<Node> node = DocumentReader.read(file, text, diagnostics);
        if (node.isEmpty() || diagnostics.hasErrors()) {
            throw RefusedEdit.of(diagnostics.all());
        }
        return Data.of(node.get());
    }

    private String changed(Change change) {
        Spot root = Spots.of(text);
        if (change instanceof Change.Insert insert) {
            Spot list = find(root, insert.pointer());
            return insert(list, insert.at(), insert.pointer(), () -> item(list, insert.value()));
        }
        if (change instanceof Change.Enter enter) {
            Spot map = find(root, enter.pointer());
            return enter(map, enter.at(), enter.pointer(), enter.key(), enter.value());
        }
        String pointer = change.pointer();
        Spot parent = find(root, Pointers.parent(pointer));
        int at = member(parent, Pointers.last(pointer));
        if (change instanceof Change.Put put) {
            return at < 0
                    ? enter(
                            parent,
                            parent.members().size(),
                            Pointers.parent(pointer),
                            Pointers.last(pointer),
                            put.value())
                    : put(parent, parent.members().get(at), put);
        }
        if (change instanceof Change.Remove) {
            return new Cut(text, newline).without(parent, at, pointer, place(parent.start()));
        }
        if (change instanceof Change.Move move) {
            return new Cut(text, newline).moved(parent, at, move.to());
        }
        Spot.Member renamed = parent.members().get(at);
        return replaced(
                renamed.from(), renamed.keyEnd(), Written.scalar(((Change.Rename) change).key(), parent.flow()));
    }

    // ---- another value in place of one

    private String put(Spot parent, Spot.Member member, Change.Put put) {
        Spot old = member.value();
        boolean flow = parent.flow();
        if (put.value() instanceof Data.One one && old.kind() == Spot.Kind.ONE) {
            boolean block = old.style() == ScalarStyle.LITERAL || old.style() == ScalarStyle.FOLDED;
            String scalar = block ? Written.scalar(one.text(), flow) : Written.scalar(one.text(), flow, old.style());
            return replaced(old.start(), old.end(), old.isEmptyScalar() ? " " + scalar : scalar);
        }
        String value = flow ? written.flow(put.value()) : written.value(put.value());
        boolean lines =
                old.kind() != Spot.Kind.ONE && !old.flow() && !member.key().isEmpty();
        // A block begins on the line below its key; what takes its place stands beside the key.
        int from = lines ? text.indexOf(':', member.keyEnd()) + 1 : old.start();
        return replaced(from, old.end(), lines || old.isEmptyScalar() ? " " + value : value);
    }

    // ---- something more

    private String enter(Spot map, int at, String pointer, String key, Data value) {
        // A question among questions, a kind among kinds: what the entry before holds on lines of its own, this one
        // does too.
        Optional<Spot> model = map.members().stream()
                .map(Spot.Member::value)
                .filter(v -> v.kind() == Spot.Kind.NAMED)
                .filter(v -> value instanceof Data.Named)
                .findFirst();
        return insert(
                map,
                at,
                pointer,
                () -> map.flow()
                        ? Written.scalar(key, true) + ": " + written.flow(value)
                        : written.entry(key, value, column(map), model));
    }

    private String item(Spot list, Data value) {
        if (list.flow()) {
            return written.flow(value);
        }
        Optional<Spot> model = list.members().stream()
                .map(Spot.Member::value)
                .filter(v -> v.kind() == Spot.Kind.NAMED)
                .reduce((first, second) -> second);
        return "- " + written.item(value, column(list) + 2, model);
    }

    private String insert(Spot parent, int at, String pointer, Supplier<String> writer) {
        List<Spot.Member> members = parent.members();
        if (!parent.flow() && members.isEmpty() || parent.kind() == Spot.Kind.ONE) {
            throw RefusedEdit.tangled(place(parent.start()), pointer);
        }
        String added = writer.get();
        if (parent.flow()) {
            if (members.isEmpty()) {
                return replaced(parent.start() + 1, parent.start() + 1, added);
            }
            return at < members.size()
                    ? replaced(members.get(at).from(), members.get(at).from(), added + ", ")
                    : replaced(end(members, at - 1), end(members, at - 1), ", " + added);
        }
        String margin = newline + " ".repeat(column(parent));
        if (at == 0) {
            int from = from(members.get(0), pointer);
            return replaced(from, from, added + margin);
        }
        int end = lineEnd(end(members, at - 1));
        return replaced(end, end, margin + added);
    }

    // ---- where things are

    private Spot find(Spot root, String pointer) {
        Spot here = root;
        for (String step : Pointers.steps(pointer)) {
            int at = member(here, step);
            if (at < 0) {
                throw RefusedEdit.nowhere(pointer);
            }
            here = here.members().get(at).value();
        }
        return here;
    }

    private static int member(Spot parent, String step) {
        if (parent.kind() == Spot.Kind.MANY) {
            int at = Pointers.index(step);
            return at < parent.members().size() ? at : -1;
        }
        for (int i = 0; i < parent.members().size(); i++) {
            if (parent.members().get(i).key().equals(step)) {
                return i;
            }
        }
        return -1;
    }

    /** Column in which the members of a block stand, from 0. */
    private int column(Spot block) {
        int from =
                block.members().isEmpty() ? block.start() : from(block.members().get(0), "");
        return from - (text.lastIndexOf('\n', from - 1) + 1);
    }

    private int from(Spot.Member member, String pointer) {
        if (member.from() < 0) {
            throw RefusedEdit.tangled(place(member.value().start()), pointer);
        }
        return member.from();
    }

    private static int end(List<Spot.Member> members, int at) {
        return members.get(at).end();
    }

    private int lineEnd(int from) {
        int end = text.indexOf('\n', from);
        int before = end < 0 ? text.length() : end;
        return before > from && text.charAt(before - 1) == '\r' ? before - 1 : before;
    }

    private String replaced(int from, int to, String with) {
        return text.substring(0, from) + with + text.substring(to);
    }

    private org.washwright.document.Place place(int offset) {
        return new SourceText(file, text).at(offset);
    }
}

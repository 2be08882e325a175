package org.washwright.editing.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.quantity.Dimension;
import org.washwright.rule.Edition;

/** What may be chosen in a field, out of the words of the edition. */
final class Choices {

    private final Optional<Edition> words;

    Choices(Optional<Edition> words) {
        this.words = words;
    }

    /** Something that may be chosen, with what it is called. */
    record Choice(String id, String name) {
        /** What a reader sees. */
        public String shown() {
            return name.isEmpty() || name.equals(id) ? id : name + " (" + id + ")";
        }
    }

    List<Choice> terms(String kind) {
        List<Choice> out = new ArrayList<>();
        words.ifPresent(w -> w.catalogue().ofKind(kind).values().forEach(t -> out.add(new Choice(t.id(), t.name()))));
        return out;
    }

    List<Choice> kinds() {
        List<Choice> out = new ArrayList<>();
        words.ifPresent(w -> w.catalogue().kinds().values().forEach(k -> out.add(new Choice(k.id(), k.name()))));
        return out;
    }

    List<Choice> sources() {
        List<Choice> out = new ArrayList<>();
        words.ifPresent(w -> w.sources().values().forEach(s -> out.add(new Choice(s.id(), s.title()))));
        return out;
    }

    static List<Choice> dimensions() {
        return Dimension.ids().stream().sorted().map(d -> new Choice(d, "")).toList();
    }

    static List<Choice> of(String... words) {
        return java.util.Arrays.stream(words).map(w -> new Choice(w, "")).toList();
    }
}

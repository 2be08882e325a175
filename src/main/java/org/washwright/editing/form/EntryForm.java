package org.washwright.editing.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.edit.Change;
import org.washwright.document.edit.Data;
import org.washwright.document.edit.Pointers;
import org.washwright.editing.Posted;

/** The changes of a file that the form of one entry asks for. A field that says the same is not changed. */
final class EntryForm {

    private EntryForm() {}

    /** Changes of an entry that is there. */
    static List<Change> changed(List<FieldSpec> fields, String pointer, Data file, Posted posted) {
        List<Change> changes = new ArrayList<>();
        Map<String, Data> parents = new LinkedHashMap<>();
        Map<String, Integer> left = new LinkedHashMap<>();
        for (FieldSpec spec : fields) {
            if (!posted.has(spec.name())) {
                continue;
            }
            Optional<Data> now = file.at(pointer + spec.path());
            FieldValues.Typed typed = FieldValues.typed(spec, posted);
            if (typed.equals(FieldValues.shown(spec, now))) {
                continue;
            }
            Optional<Data> wanted = FieldValues.data(spec, typed);
            String at = pointer + spec.path();
            String parent = Pointers.parent(at);
            if (wanted.isPresent() && file.at(parent).isEmpty()) {
                nest(parents, parent, Pointers.last(at), wanted.get());
            } else if (wanted.isPresent()) {
                changes.add(new Change.Put(at, wanted.get()));
            } else if (now.isPresent()) {
                changes.add(new Change.Remove(at));
                left.merge(parent, 1, Integer::sum);
            }
        }
        parents.forEach((parent, map) -> changes.add(new Change.Put(parent, map)));
        return emptied(changes, left, pointer, file);
    }

    private static void nest(Map<String, Data> parents, String parent, String key, Data value) {
        Map<String, Data> entries = parents.get(parent) instanceof Data.Named map
                ? new LinkedHashMap<>(map.entries())
                : new LinkedHashMap<>();
        entries.put(key, value);
        parents.put(parent, new Data.Named(entries));
    }

    /** A map of which nothing is left goes as a whole. */
    private static List<Change> emptied(List<Change> changes, Map<String, Integer> left, String pointer, Data file) {
        List<Change> out = new ArrayList<>(changes);
        left.forEach((parent, gone) -> {
            boolean all = !parent.equals(pointer)
                    && file.at(parent).orElse(Data.one("")) instanceof Data.Named map
                    && map.entries().size() == gone
                    && changes.stream()
                            .noneMatch(
                                    c -> c instanceof Change.Put && c.pointer().startsWith(parent + "/"));
            if (all) {
                out.removeIf(c -> c.pointer().startsWith(parent + "/"));
                out.add(new Change.Remove(parent));
            }
        });
        return out;
    }

    /** The change that adds an entry behind the others of a list. */
    static Change added(FileShape shape, String list, Data file, Posted posted) {
        Map<FieldSpec, Data> values = new LinkedHashMap<>();
        for (FieldSpec spec : shape.fields()) {
            FieldValues.data(spec, FieldValues.typed(spec, posted)).ifPresent(d -> values.put(spec, d));
        }
        int at = file.at(list).orElse(Data.one("")) instanceof Data.Many many
                ? many.items().size()
                : 0;
        return at == 0
                ? new Change.Put(list, new Data.Many(List.of(shape.made(values))))
                : new Change.Insert(list, at, shape.made(values));
    }
}

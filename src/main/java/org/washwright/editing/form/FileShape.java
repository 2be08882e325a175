package org.washwright.editing.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.edit.Data;
import org.washwright.document.edit.Pointers;

/**
 * What a file is made of, for its forms.
 *
 * @param what its entries are called
 * @param lists pointers of the lists that hold them
 * @param fields fields of an entry
 * @param head fields of the file itself; none for most
 */
record FileShape(String what, List<String> lists, List<FieldSpec> fields, List<FieldSpec> head) {

    /** Where an entry stands and what it is called. */
    record Entry(String pointer, String id, String name, String list) {
        /** Whether it holds a word, in any case of letters. */
        boolean holds(String q) {
            return (id + " " + name).toLowerCase(java.util.Locale.ROOT).contains(q.toLowerCase(java.util.Locale.ROOT));
        }
    }

    /** All entries in order. */
    List<Entry> entries(Data data) {
        List<Entry> out = new ArrayList<>();
        for (String list : lists) {
            if (data.at(list).orElse(Data.one("")) instanceof Data.Many many) {
                for (int i = 0; i < many.items().size(); i++) {
                    Data item = many.items().get(i);
                    String id = text(item, "id");
                    String name = Optional.of(text(item, "name"))
                            .filter(n -> !n.isEmpty())
                            .orElseGet(() -> text(item, "label").isEmpty() ? text(item, "title") : text(item, "label"));
                    out.add(new Entry(Pointers.child(list, i), id, name.isEmpty() ? id : name, list));
                }
            }
        }
        return out;
    }

    private static String text(Data data, String key) {
        return data.at("/" + key).map(Data::text).orElse("");
    }

    /** A new entry with what was typed; fields below others are nested. */
    Data made(Map<FieldSpec, Data> values) {
        Map<String, Object> tree = new LinkedHashMap<>();
        values.forEach((spec, value) -> put(tree, Pointers.steps(spec.path()), value));
        return data(tree);
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> tree, List<String> steps, Data value) {
        Map<String, Object> here = tree;
        for (String step : steps.subList(0, steps.size() - 1)) {
            here = (Map<String, Object>) here.computeIfAbsent(step, s -> new LinkedHashMap<String, Object>());
        }
        here.put(steps.get(steps.size() - 1), value);
    }

    private static Data data(Object tree) {
        if (tree instanceof Map<?, ?> map) {
            Map<String, Data> entries = new LinkedHashMap<>();
            map.forEach((key, value) -> entries.put((String) key, data(value)));
            return new Data.Named(entries);
        }
        return (Data) tree;
    }
}

package org.washwright.document.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.washwright.document.edit.Data.Many;
import org.washwright.document.edit.Data.Named;

/** What a document is to say after a change; holds no text and no places, so that the text can be held against it. */
public final class DataChanges {

    private DataChanges() {}

    /**
     * The data after a change.
     *
     * @throws RefusedEdit when the pointer leads nowhere or an index lies outside
     */
    public static Data apply(Data data, Change change) {
        if (change instanceof Change.Insert insert) {
            return at(data, insert.pointer(), list -> inserted(insert, list));
        }
        if (change instanceof Change.Enter enter) {
            return at(data, enter.pointer(), map -> entered(enter, map));
        }
        if (change.pointer().isEmpty()) {
            throw RefusedEdit.nowhere(change.pointer());
        }
        return at(data, Pointers.parent(change.pointer()), parent -> changed(parent, change));
    }

    private static Data at(Data data, String pointer, UnaryOperator<Data> change) {
        return at(data, Pointers.steps(pointer), pointer, change);
    }

    private static Data at(Data data, List<String> steps, String pointer, UnaryOperator<Data> change) {
        if (steps.isEmpty()) {
            return change.apply(data);
        }
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        if (data instanceof Named map && map.entries().containsKey(step)) {
            Map<String, Data> entries = new LinkedHashMap<>(map.entries());
            entries.put(step, at(entries.get(step), rest, pointer, change));
            return new Named(entries);
        }
        if (data instanceof Many list) {
            List<Data> items = new ArrayList<>(list.items());
            int i = within(step, items.size(), pointer);
            items.set(i, at(items.get(i), rest, pointer, change));
            return new Many(items);
        }
        throw RefusedEdit.nowhere(pointer);
    }

    private static Data inserted(Change.Insert insert, Data data) {
        if (!(data instanceof Many list)
                || insert.at() < 0
                || insert.at() > list.items().size()) {
            throw RefusedEdit.nowhere(insert.pointer());
        }
        List<Data> items = new ArrayList<>(list.items());
        items.add(insert.at(), insert.value());
        return new Many(items);
    }

    private static Data entered(Change.Enter enter, Data data) {
        if (!(data instanceof Named map)
                || map.entries().containsKey(enter.key())
                || enter.at() < 0
                || enter.at() > map.entries().size()) {
            throw RefusedEdit.nowhere(Pointers.child(enter.pointer(), enter.key()));
        }
        List<String> keys = new ArrayList<>(map.keys());
        keys.add(enter.at(), enter.key());
        Map<String, Data> entries = new LinkedHashMap<>();
        keys.forEach(k -> entries.put(k, map.entries().getOrDefault(k, enter.value())));
        return new Named(entries);
    }

    private static Data changed(Data parent, Change change) {
        String step = Pointers.last(change.pointer());
        if (parent instanceof Named map) {
            return new Named(entry(map, step, change));
        }
        if (parent instanceof Many list) {
            return new Many(item(list, step, change));
        }
        throw RefusedEdit.nowhere(change.pointer());
    }

    private static Map<String, Data> entry(Named map, String key, Change change) {
        Map<String, Data> entries = new LinkedHashMap<>(map.entries());
        if (change instanceof Change.Put put) {
            entries.put(key, put.value());
            return entries;
        }
        if (!entries.containsKey(key)) {
            throw RefusedEdit.nowhere(change.pointer());
        }
        if (change instanceof Change.Remove) {
            entries.remove(key);
            return entries;
        }
        List<String> keys = new ArrayList<>(map.keys());
        if (change instanceof Change.Move move) {
            keys.remove(key);
            keys.add(within(move.to(), keys.size() + 1, change.pointer()), key);
        }
        Map<String, Data> out = new LinkedHashMap<>();
        for (String k : keys) {
            boolean renamed = change instanceof Change.Rename && k.equals(key);
            String name = renamed ? ((Change.Rename) change).key() : k;
            if (renamed && !name.equals(key) && entries.containsKey(name)) {
                throw RefusedEdit.nowhere(change.pointer());
            }
            out.put(name, entries.get(k));
        }
        return out;
    }

    private static List<Data> item(Many list, String step, Change change) {
        List<Data> items = new ArrayList<>(list.items());
        int i = within(step, items.size(), change.pointer());
        if (change instanceof Change.Put put) {
            items.set(i, put.value());
        } else if (change instanceof Change.Remove) {
            items.remove(i);
        } else if (change instanceof Change.Move move) {
            int to = within(move.to(), items.size(), change.pointer());
            items.add(to, items.remove(i));
        } else {
            throw RefusedEdit.nowhere(change.pointer());
        }
        return items;
    }

    private static int within(String step, int size, String pointer) {
        return within(Pointers.index(step), size, pointer);
    }

    private static int within(int at, int size, String pointer) {
        if (at < 0 || at >= size) {
            throw RefusedEdit.nowhere(pointer);
        }
        return at;
    }
}

package org.washwright.task;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A cleaning task: what has to be cleaned, of what, for what, and where. Immutable.
 *
 * @param title what people call it
 * @param notes free text, no part of any decision
 * @param lists entries by group; a single group has at most one entry
 * @param declared values of attributes that the edition declares, by attribute id
 */
public record CleaningTask(String title, String notes, Map<Group, Entries> lists, Map<String, Given> declared) {

    /**
     * Entries of a group.
     *
     * @param entries in the order given
     * @param open true when there may be more than those listed
     */
    public record Entries(List<Entry> entries, boolean open) {

        /** Nothing is known of the group. */
        public static final Entries UNKNOWN = new Entries(List.of(), true);

        /** Keeps a copy. */
        public Entries {
            entries = List.copyOf(entries);
        }
    }

    /** Keeps copies in fixed order. */
    public CleaningTask {
        EnumMap<Group, Entries> copy = new EnumMap<>(Group.class);
        copy.putAll(lists);
        lists = Collections.unmodifiableMap(copy);
        declared = Collections.unmodifiableMap(new TreeMap<>(declared));
    }

    /** Entries of a group; open and empty when nothing was said. */
    public Entries entries(Group group) {
        return lists.getOrDefault(group, Entries.UNKNOWN);
    }

    /** The one entry of a single group; empty of knowledge when nothing was said. */
    public Entry single(Group group) {
        List<Entry> entries = entries(group).entries();
        return entries.isEmpty() ? Entry.EMPTY : entries.get(0);
    }

    /** The same task with other entries in one group. */
    public CleaningTask with(Group group, Entries entries) {
        EnumMap<Group, Entries> copy = new EnumMap<>(Group.class);
        copy.putAll(lists);
        copy.put(group, entries);
        return new CleaningTask(title, notes, copy, declared);
    }

    /** The same task with another value of one attribute of one entry. */
    public CleaningTask with(Group group, int index, String attribute, Value value) {
        Entries old = entries(group);
        List<Entry> entries = new java.util.ArrayList<>(old.entries());
        while (entries.size() <= index) {
            entries.add(Entry.EMPTY);
        }
        Map<String, Given> given = new TreeMap<>(entries.get(index).given());
        given.put(
                attribute, Given.of(value, "/" + group.key() + (group.isList() ? "/" + index : "") + "/" + attribute));
        entries.set(index, new Entry(given));
        return with(group, new Entries(entries, old.open()));
    }
}

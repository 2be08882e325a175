package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.washwright.engine.Readers;
import org.washwright.engine.Words;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** What of a task can be changed: what it holds, and what the rules read. */
final class ChangeOffers {
    private final Edition edition;
    private final CleaningTask task;
    private final Readers readers;
    private final Words words;

    ChangeOffers(KeptAnswer kept) {
        this.edition = kept.edition();
        this.task = kept.asked().task();
        this.readers = Readers.of(edition);
        this.words = new Words(edition.catalogue());
    }

    List<ChangeForm.Offers> all() {
        List<ChangeForm.Offers> out = new ArrayList<>();
        for (Group group : Group.values()) {
            List<ChangeForm.Offer> offers = group.isList() ? listed(group) : attributes(group, group.key(), "", 0);
            out.add(new ChangeForm.Offers(group.heading(), offers));
        }
        List<ChangeForm.Offer> declared = new ArrayList<>();
        edition.declaredAttributes()
                .forEach((id, a) -> declared.add(new ChangeForm.Offer(
                        FormNames.DECLARED + "." + id,
                        a.label()
                                + now(Optional.ofNullable(task.declared().get(id))
                                        .map(g -> words.value(g.value(), a.type(), Words.GIVEN))))));
        out.add(new ChangeForm.Offers("Asked by this rulebook", declared));
        return out.stream().filter(o -> !o.offers().isEmpty()).toList();
    }

    private List<ChangeForm.Offer> listed(Group group) {
        CleaningTask.Entries entries = task.entries(group);
        int size = entries.entries().size();
        List<ChangeForm.Offer> out = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            out.addAll(attributes(group, group.key() + "." + i, " of " + entry(group, i), i));
        }
        if (size < group.cap()) {
            out.addAll(attributes(group, group.key() + "." + size, " of another " + group.label(), size));
        }
        List<String> steps = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            steps.add("/" + group.key() + "/" + i + "=remove");
        }
        if (size > 0 || entries.open()) {
            steps.add("/" + group.key() + "=none");
        }
        steps.add("/" + group.key() + "/open=" + (entries.open() ? "no" : "yes"));
        steps.forEach(s -> out.add(new ChangeForm.Offer(s, words(s))));
        return out;
    }

    private List<ChangeForm.Offer> attributes(Group group, String prefix, String of, int index) {
        List<Entry> entries = task.entries(group).entries();
        Entry entry = index < entries.size() ? entries.get(index) : Entry.EMPTY;
        List<ChangeForm.Offer> out = new ArrayList<>();
        for (Attribute a : group.attributes()) {
            boolean given = entry.given().containsKey(a.name());
            boolean read = !readers.of(group.factType(), a.name()).isEmpty();
            if (!a.computed() && (given || read)) {
                Optional<String> now = Optional.of(entry.value(a.name()))
                        .filter(v -> given && !(v instanceof Value.Unknown))
                        .map(v -> words.value(v, a.type(), Words.GIVEN));
                String label = a.label().equals(group.label()) ? of.replaceFirst("^ of ", "") : a.label() + of;
                out.add(new ChangeForm.Offer(
                        prefix + "." + a.name(), (label.isEmpty() ? a.label() : label) + now(now)));
            }
        }
        return out;
    }

    private static String now(Optional<String> value) {
        return value.map(v -> " (now " + v + ")").orElse("");
    }

    private String entry(Group group, int index) {
        return group.label() + " " + (index + 1);
    }

    /** A change that needs no typing, in words; as it is written where it has none. */
    String words(String set) {
        int equals = set.indexOf('=');
        String[] steps = equals < 2 ? new String[0] : set.substring(1, equals).split("/");
        Optional<Group> group = steps.length == 0 ? Optional.empty() : Group.byKey(steps[0]);
        String value = set.substring(equals + 1);
        if (group.isEmpty()) {
            return set;
        }
        String heading = group.get().heading().replaceFirst("[:,].*", "").toLowerCase(Locale.ROOT);
        if (steps.length == 1) {
            return heading + ": "
                    + switch (value) {
                        case "none" -> "there are none";
                        case "unknown" -> "nothing is known";
                        case "remove" -> "nothing is said";
                        default -> value;
                    };
        }
        if (steps[1].equals("open")) {
            return heading + ": " + (value.equals("yes") ? "there may be more" : "these are all");
        }
        if (value.equals("remove") && steps[1].matches("[0-9]{1,2}")) {
            return "take out " + entry(group.get(), Integer.parseInt(steps[1])) + named(group.get(), steps[1]);
        }
        return set;
    }

    private String named(Group group, String index) {
        List<Entry> entries = task.entries(group).entries();
        int i = Integer.parseInt(index);
        Attribute first = group.attributes().get(0);
        return i < entries.size() && !(entries.get(i).value(first.name()) instanceof Value.Unknown)
                ? " (" + words.value(entries.get(i).value(first.name()), first.type(), Words.GIVEN) + ")"
                : "";
    }
}

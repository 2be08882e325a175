package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.explain.compare.Comparison.AskedChange;
import org.washwright.task.Attribute;
import org.washwright.task.Group;

/** What two requests asked differently: values of the task, edition, wishes, program. */
final class AskedChanges {

    /** What is said of a value that nobody gave. */
    static final String NOT_KNOWN = "not known";

    /** What is said of an entry that is not there. */
    static final String NO_ENTRY = "no such entry";

    private static final String ATTRIBUTES = "attributes";
    private static final String OPEN = "open";

    private final Side before;
    private final Side after;
    private final List<AskedChange> out = new ArrayList<>();

    private AskedChanges(Side before, Side after) {
        this.before = before;
        this.after = after;
    }

    static List<AskedChange> of(Side before, Side after) {
        AskedChanges changes = new AskedChanges(before, after);
        changes.task();
        changes.rest();
        return List.copyOf(changes.out);
    }

    private void task() {
        Map<String, Object> old = values(before);
        Map<String, Object> now = values(after);
        for (String pointer : ordered(old, now)) {
            if (!plain(old.get(pointer)).equals(plain(now.get(pointer)))) {
                out.add(new AskedChange(
                        "task",
                        pointer,
                        name(pointer),
                        words(before, pointer, old.get(pointer)),
                        words(after, pointer, now.get(pointer))));
            }
        }
    }

    /** Groups and attributes in the order in which a task is described. */
    private static List<String> ordered(Map<String, Object> old, Map<String, Object> now) {
        Map<String, Boolean> all = new LinkedHashMap<>();
        for (Group group : Group.values()) {
            String start = "/" + group.key() + "/";
            TreeSet<String> own = new TreeSet<>((a, b) ->
                    order(group, a) - order(group, b) != 0 ? order(group, a) - order(group, b) : a.compareTo(b));
            old.keySet().stream().filter(p -> p.startsWith(start)).forEach(own::add);
            now.keySet().stream().filter(p -> p.startsWith(start)).forEach(own::add);
            own.forEach(p -> all.put(p, true));
        }
        new TreeSet<>(old.keySet()).forEach(p -> all.put(p, true));
        new TreeSet<>(now.keySet()).forEach(p -> all.put(p, true));
        return List.copyOf(all.keySet());
    }

    private static int order(Group group, String pointer) {
        String[] steps = pointer.split("/");
        int entry = group.isList() && steps.length == 4 ? Integer.parseInt(steps[2]) + 1 : 0;
        List<String> names = group.attributes().stream().map(Attribute::name).toList();
        return entry * 100 + names.indexOf(steps[steps.length - 1]);
    }

    /** Values of the task of a request by JSON pointer in a task's usual form. */
    private static Map<String, Object> values(Side index) {
        Map<String, Object> out = new TreeMap<>();
        if (index.answer().request().task() instanceof Map<?, ?> task) {
            task.forEach((key, value) -> group(out, "/" + key, value));
        }
        return out;
    }

    private static void group(Map<String, Object> out, String pointer, Object value) {
        if (!(value instanceof Map<?, ?> map)) {
            out.put(pointer + "/", value);
            return;
        }
        if (map.get("list") instanceof List<?> list && map.get(OPEN) instanceof Boolean open) {
            out.put(pointer + "/" + OPEN, open ? "yes" : "no");
            for (int i = 0; i < list.size(); i++) {
                String entry = pointer + "/" + i + "/";
                if (list.get(i) instanceof Map<?, ?> values) {
                    values.forEach((name, v) -> out.put(entry + name, v));
                }
            }
            return;
        }
        map.forEach((name, v) -> out.put(pointer + "/" + name, v));
    }

    /** The same value however its numbers are held. */
    private static Object plain(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Number n) {
            return n.doubleValue();
        }
        if (value instanceof List<?> list) {
            return list.stream().map(AskedChanges::plain).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> out = new TreeMap<>();
            map.forEach((k, v) -> out.put(String.valueOf(k), plain(v)));
            return out;
        }
        return value;
    }

    private String name(String pointer) {
        String[] steps = pointer.substring(1).split("/");
        Optional<Group> group = Group.byKey(steps[0]);
        String last = steps[steps.length - 1];
        if (group.isEmpty()) {
            String ref = ATTRIBUTES + "/" + last + "/value";
            return after.attribute(ref)
                    .or(() -> before.attribute(ref))
                    .map(Answer.Attribute::label)
                    .filter(label -> !label.equals("value"))
                    .orElse(last.replace('-', ' '));
        }
        if (last.equals(OPEN)) {
            return "more "
                    + group.get().heading().toLowerCase(java.util.Locale.ROOT).replaceFirst(":.*", "")
                    + " than those listed";
        }
        String label = group.get()
                .attribute(last)
                .map(Attribute::label)
                .orElse(group.get().label());
        if (!group.get().isList() || steps.length < 3) {
            return label;
        }
        String entry = group.get().label() + " " + (Integer.parseInt(steps[1]) + 1);
        return label.equals(group.get().label()) ? entry : label + " of " + entry;
    }

    private static String words(Side index, String pointer, Object canonical) {
        if (canonical == null) {
            return entryIsThere(index, pointer) ? NOT_KNOWN : NO_ENTRY;
        }
        String ref = pointer.substring(1) + (pointer.startsWith("/" + ATTRIBUTES + "/") ? "/value" : "");
        return index.attribute(ref).map(Answer.Attribute::value).orElseGet(() -> fallback(canonical));
    }

    private static boolean entryIsThere(Side index, String pointer) {
        String[] steps = pointer.substring(1).split("/");
        boolean listed = Group.byKey(steps[0]).filter(Group::isList).isPresent() && steps.length == 3;
        return !listed || index.answer().facts().stream().anyMatch(f -> f.id().equals(steps[0] + "/" + steps[1]));
    }

    private static String fallback(Object canonical) {
        if (canonical instanceof Map<?, ?> map && map.containsKey("value")) {
            return fallback(map.get("value"));
        }
        if (canonical instanceof List<?> list) {
            return list.stream().map(String::valueOf).collect(Collectors.joining(" or "));
        }
        return String.valueOf(canonical);
    }

    private void rest() {
        Answer.Request a = before.answer().request();
        Answer.Request b = after.answer().request();
        if (!a.meaningHash().equals(b.meaningHash())) {
            add("edition", "edition", "edition", edition(a), edition(b));
        }
        Map<String, String> old = wishes(a);
        Map<String, String> now = wishes(b);
        TreeSet<String> places = new TreeSet<>(old.keySet());
        places.addAll(now.keySet());
        for (String place : places) {
            String was = old.getOrDefault(place, "as in the edition");
            String is = now.getOrDefault(place, "as in the edition");
            if (!was.equals(is)) {
                add("wish", place, wish(place), was, is);
            }
        }
        if (!a.program().equals(b.program())) {
            add("program", "program", "program", a.program(), b.program());
        }
    }

    private void add(String kind, String place, String name, String was, String is) {
        out.add(new AskedChange(kind, place, name, was, is));
    }

    private static String edition(Answer.Request request) {
        return request.edition() + " ("
                + request.meaningHash()
                        .substring(0, Math.min(8, request.meaningHash().length())) + ")";
    }

    private static Map<String, String> wishes(Answer.Request r) {
        Map<String, String> out = new TreeMap<>();
        r.weights().forEach(w -> out.put("weights/" + w.area(), String.valueOf(w.weight())));
        r.comparisons().forEach(c -> out.put("comparisons/" + c.pair(), String.valueOf(c.ratio())));
        r.assumptions().forEach(x -> out.put("assumptions/" + x.id(), x.value()));
        out.put("asOf", r.asOf());
        out.put("seed", String.valueOf(r.seed()));
        return out;
    }

    private String wish(String place) {
        String id = place.substring(place.indexOf('/') + 1);
        if (place.startsWith("weights/")) {
            return "weight of " + area(id);
        }
        if (place.startsWith("comparisons/")) {
            return String.join(
                    " against ",
                    java.util.Arrays.stream(id.split("/")).map(this::area).toList());
        }
        if (place.startsWith("assumptions/")) {
            return after.input("assumption/" + id)
                    .or(() -> before.input("assumption/" + id))
                    .map(org.washwright.assessment.Design.Input::label)
                    .orElse(id.replace('-', ' '));
        }
        return place.equals("asOf") ? "law and prices as of" : place;
    }

    private String area(String id) {
        return List.of(after, before).stream()
                .flatMap(i -> i.answer().candidates().stream())
                .flatMap(c -> c.areas().stream())
                .filter(x -> x.area().equals(id))
                .map(Answer.Area::name)
                .findFirst()
                .orElse(id);
    }
}

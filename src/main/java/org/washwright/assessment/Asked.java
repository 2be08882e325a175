package org.washwright.assessment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Span;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * What an answer says it was asked: the task and the wishes out of its request. Asking them again gives the same answer, so
 * that an answer can be checked and varied without the file it came from. Title and notes, which decide nothing, are not in
 * a request.
 *
 * @param task the task, with a title of no meaning
 * @param wishes weights, comparisons, assumptions, date and seed
 */
public record Asked(CleaningTask task, Wishes wishes) {

    private static final String UNTITLED = "task of an answer";

    /**
     * Reads the request of an answer.
     *
     * @param catalogue the catalogue of the edition that answered; its attributes are those that a task may declare
     * @throws UnreadableRequest when it is no request that this program writes
     */
    public static Asked of(Answer.Request request, Catalogue catalogue) {
        Map<String, Object> task = map(request.task(), "/request/task");
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        Map<String, Given> declared = new TreeMap<>();
        task.forEach((key, value) -> {
            if (key.equals("attributes")) {
                map(value, "/request/task/attributes")
                        .forEach((id, v) -> declared.put(
                                id,
                                given(
                                        v,
                                        Optional.ofNullable(
                                                catalogue.attributes().get(id)),
                                        "/attributes/" + id)));
                return;
            }
            Group group = Group.byKey(key).orElseThrow(() -> new UnreadableRequest("/request/task/" + key));
            entries(group, value).ifPresent(e -> lists.put(group, e));
        });
        return new Asked(new CleaningTask(UNTITLED, "", lists, declared), wishes(request));
    }

    private static Wishes wishes(Answer.Request request) {
        Map<String, Double> weights = new TreeMap<>();
        Map<String, Double> comparisons = new TreeMap<>();
        request.comparisons().forEach(c -> comparisons.put(c.pair(), c.ratio()));
        if (comparisons.isEmpty()) {
            request.weights().forEach(w -> weights.put(w.area(), w.weight()));
        }
        Map<String, String> assumptions = new TreeMap<>();
        request.assumptions().forEach(a -> assumptions.put(a.id(), a.value()));
        return new Wishes(weights, comparisons, assumptions, request.asOf(), request.seed());
    }

    private static Optional<CleaningTask.Entries> entries(Group group, Object value) {
        String place = "/request/task/" + group.key();
        if (group.isList()) {
            Map<String, Object> list = map(value, place);
            List<Entry> entries = new ArrayList<>();
            for (Object item : list(list.get("list"), place + "/list")) {
                entries.add(entry(group, map(item, place), "/" + group.key() + "/" + entries.size()));
            }
            return Optional.of(new CleaningTask.Entries(entries, Boolean.TRUE.equals(list.get("open"))));
        }
        if (Value.UNKNOWN.knowledge().equals(value)) {
            return Optional.of(new CleaningTask.Entries(List.of(Entry.EMPTY), false));
        }
        Map<String, Object> single = map(value, place);
        return single.isEmpty()
                ? Optional.empty()
                : Optional.of(new CleaningTask.Entries(List.of(entry(group, single, "/" + group.key())), false));
    }

    private static Entry entry(Group group, Map<String, Object> values, String pointer) {
        Map<String, Given> given = new TreeMap<>();
        values.forEach((name, value) -> given.put(name, given(value, group.attribute(name), pointer + "/" + name)));
        return new Entry(given);
    }

    private static Given given(Object written, Optional<Attribute> attribute, String pointer) {
        if (attribute.isEmpty()) {
            throw new UnreadableRequest("/request/task" + pointer);
        }
        boolean asked = written instanceof Map<?, ?>;
        Map<String, Object> tree = asked ? map(written, pointer) : Map.of();
        Value value = value(asked ? tree.get("value") : written, pointer);
        boolean isCode = attribute.get().type() instanceof FieldType.CodeType;
        String code = isCode && value instanceof Value.OneOf o ? o.terms().first() : "";
        return new Given(
                value, pointer, String.valueOf(tree.getOrDefault("path", "")), isTrue(tree.get("overruled")), code);
    }

    private static boolean isTrue(Object flag) {
        return Boolean.TRUE.equals(flag);
    }

    private static Value value(Object written, String pointer) {
        if (Value.UNKNOWN.knowledge().equals(written)) {
            return Value.UNKNOWN;
        }
        if (Value.NOT_APPLICABLE.knowledge().equals(written)) {
            return Value.NOT_APPLICABLE;
        }
        List<Object> list = list(written, "/request/task" + pointer);
        if (!list.isEmpty() && list.stream().allMatch(String.class::isInstance) && !isOpenRange(list)) {
            return Value.oneOf(list.stream().map(String.class::cast).toList());
        }
        if (list.size() != 2) {
            throw new UnreadableRequest("/request/task" + pointer);
        }
        double low = end(list.get(0), Double.NEGATIVE_INFINITY, pointer);
        double high = end(list.get(1), Double.POSITIVE_INFINITY, pointer);
        if (!(low <= high)) {
            throw new UnreadableRequest("/request/task" + pointer);
        }
        return new Value.Number(new Span(low, high));
    }

    private static boolean isOpenRange(List<Object> list) {
        return list.size() == 2 && list.stream().allMatch(CanonicalTask.OPEN::equals);
    }

    private static double end(Object written, double open, String pointer) {
        if (CanonicalTask.OPEN.equals(written)) {
            return open;
        }
        if (written instanceof Number n) {
            return n.doubleValue();
        }
        throw new UnreadableRequest("/request/task" + pointer);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value, String place) {
        if (value instanceof Map<?, ?> map && map.keySet().stream().allMatch(String.class::isInstance)) {
            return (Map<String, Object>) map;
        }
        throw new UnreadableRequest(place);
    }

    private static List<Object> list(Object value, String place) {
        if (value instanceof List<?> list) {
            return List.copyOf(list);
        }
        throw new UnreadableRequest(place);
    }

    /** A request that this program does not write. */
    public static final class UnreadableRequest extends RuntimeException {
        private static final long serialVersionUID = 1L;

        UnreadableRequest(String pointer) {
            super("The request of the answer can't be read at " + pointer + ".");
        }
    }
}

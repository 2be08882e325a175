package org.washwright.casework;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.washwright.task.Group;

/**
 * The fields of the task form as they were typed. Rows of a list are numbered from 0 without gaps. Immutable.
 *
 * <p>Names: {@code part.mass}, {@code materials.0.hardness}, {@code attributes.ID}; behind them {@code .unit}, {@code
 * .unknown}, {@code .none} (does not apply), {@code .any} (it may also be), {@code .tree}, {@code .answers}.
 */
final class FormFields {
    /** Rows a form may hold per list beyond the cap, so that the reader can tell that there are too many. */
    private static final int ROWS_MOST = 60;

    private static final int TEXT_MOST = 12_000;

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Map<String, List<String>> values;

    private FormFields(Map<String, List<String>> values) {
        this.values = Collections.unmodifiableMap(values);
    }

    /** What a new form holds: one material and one soil of which nothing is known, and open lists. */
    static FormFields fresh() {
        FormFields fields =
                new FormFields(new LinkedHashMap<>()).withRow(Group.MATERIALS).withRow(Group.SOILS);
        for (Group group : Group.values()) {
            // Of what a part is made one knows; of all else there may be more than one thinks of.
            if (group.isList() && group != Group.MATERIALS) {
                fields = fields.with(group.key() + ".open", List.of("yes"));
            }
        }
        return fields;
    }

    static FormFields empty() {
        return new FormFields(new LinkedHashMap<>());
    }

    /** Posted fields; rows that were taken out in the browser leave no gap. */
    static FormFields of(Map<String, List<String>> posted) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        posted.forEach((name, list) -> values.put(
                name,
                list.stream()
                        .map(text -> text.length() > TEXT_MOST ? text.substring(0, TEXT_MOST) : text)
                        .toList()));
        FormFields fields = new FormFields(values);
        for (Group group : Group.values()) {
            if (group.isList()) {
                fields = fields.renumbered(group);
            }
        }
        return fields;
    }

    /** Fields as they were kept. */
    static FormFields ofJson(String json) {
        try {
            return new FormFields(JSON.readValue(json, new TypeReference<LinkedHashMap<String, List<String>>>() {}));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a draft that this program did not write", e);
        }
    }

    /** All fields, to be kept. */
    String json() {
        try {
            return JSON.writeValueAsString(values);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of text can always be written", e);
        }
    }

    String first(String name) {
        List<String> all = all(name);
        return all.isEmpty() ? "" : all.get(0).strip();
    }

    List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    boolean ticked(String name) {
        return first(name).equals("yes");
    }

    /** Everything typed, by name: what a page that asks something in between hands on. */
    Map<String, List<String>> values() {
        return values;
    }

    /** True when anything is said of a field. */
    boolean said(String name) {
        return !first(name).isEmpty()
                || !all(name + ".any").isEmpty()
                || ticked(name + ".none")
                || !first(name + ".tree").isEmpty();
    }

    int rows(Group group) {
        return numbers(group).size();
    }

    FormFields with(String name, List<String> list) {
        Map<String, List<String>> copy = new LinkedHashMap<>(values);
        copy.put(name, List.copyOf(list));
        return new FormFields(copy);
    }

    FormFields without(String... names) {
        Map<String, List<String>> copy = new LinkedHashMap<>(values);
        List.of(names).forEach(copy::remove);
        return new FormFields(copy);
    }

    /** The same with nothing said of a field. */
    FormFields silent(String name) {
        Map<String, List<String>> copy = new LinkedHashMap<>(values);
        copy.keySet().removeIf(k -> k.equals(name) || (k.startsWith(name + ".") && !k.endsWith(".row")));
        return new FormFields(copy);
    }

    FormFields withRow(Group group) {
        int next = rows(group);
        return next >= ROWS_MOST ? this : with(rowKey(group, next), List.of("yes"));
    }

    FormFields withoutRow(Group group, int row) {
        Map<String, List<String>> copy = new LinkedHashMap<>(values);
        copy.keySet().removeIf(name -> name.startsWith(group.key() + "." + row + "."));
        return new FormFields(copy).renumbered(group);
    }

    /** The field that says that a row is there even when nothing is typed in it. */
    static String rowKey(Group group, int row) {
        return group.key() + "." + row + ".row";
    }

    private List<Integer> numbers(Group group) {
        Pattern pattern = Pattern.compile(Pattern.quote(group.key()) + "\\.([0-9]{1,4})\\..+");
        TreeSet<Integer> found = new TreeSet<>();
        values.keySet().forEach(name -> {
            Matcher matcher = pattern.matcher(name);
            if (matcher.matches()) {
                found.add(Integer.parseInt(matcher.group(1)));
            }
        });
        return new ArrayList<>(found);
    }

    private FormFields renumbered(Group group) {
        List<Integer> numbers = numbers(group);
        if (numbers.equals(IntStream.range(0, numbers.size()).boxed().toList()) && numbers.size() <= ROWS_MOST) {
            return this;
        }
        Map<String, List<String>> copy = new LinkedHashMap<>();
        values.forEach((name, list) -> {
            if (!name.matches(Pattern.quote(group.key()) + "\\.[0-9]{1,4}\\..+")) {
                copy.put(name, list);
                return;
            }
            String[] parts = name.split("\\.", 3);
            int at = numbers.indexOf(Integer.parseInt(parts[1]));
            if (at < ROWS_MOST) {
                copy.put(parts[0] + "." + at + "." + parts[2], list);
            }
        });
        return new FormFields(copy);
    }
}

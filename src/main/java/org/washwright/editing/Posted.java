package org.washwright.editing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The fields of a form as they were sent.
 *
 * @param values texts by name
 */
public record Posted(Map<String, List<String>> values) {

    /** The text of a field as it was typed, its line ends as one character; empty when it was not sent. */
    public String text(String name) {
        List<String> all = values.getOrDefault(name, List.of());
        return all.isEmpty() ? "" : all.get(0).replace("\r\n", "\n");
    }

    /** The text of a field without blanks around it. */
    public String word(String name) {
        return text(name).strip();
    }

    /** All texts of a field. */
    public List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    /** A number that a field holds. */
    public Optional<Integer> number(String name) {
        return Optional.of(word(name)).filter(w -> w.matches("-?[0-9]{1,6}")).map(Integer::valueOf);
    }

    /** True when the field was sent at all. */
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** The numbers N for which there is a field {@code prefix.N}, in order. */
    public List<Integer> numbers(String prefix) {
        Pattern pattern = Pattern.compile(Pattern.quote(prefix) + "\\.([0-9]{1,5})(\\..*)?");
        TreeSet<Integer> found = new TreeSet<>();
        values.keySet().forEach(name -> {
            Matcher matcher = pattern.matcher(name);
            if (matcher.matches()) {
                found.add(Integer.valueOf(matcher.group(1)));
            }
        });
        return List.copyOf(found);
    }

    /** What the button that was pressed asks for: a word and, behind a dot, of what. */
    public Asked asked() {
        String[] parts = word("do").split("\\.", 2);
        return new Asked(parts[0], parts.length > 1 ? parts[1] : "");
    }

    /** A word, and of what. */
    public record Asked(String word, String of) {

        /** Of which number; -1 when it is none. */
        public int number() {
            return of.matches("[0-9]{1,5}") ? Integer.parseInt(of) : -1;
        }
    }
}

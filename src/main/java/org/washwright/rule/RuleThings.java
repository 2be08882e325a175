package org.washwright.rule;

import java.util.Locale;
import org.washwright.task.Group;

/** What the patterns of a rule are about, in words. */
record RuleThings(Rule rule) {

    /** What a pattern is about, numbered when a rule has several of a type; empty for a declared attribute. */
    String thing(int pattern) {
        String type = rule.patterns().get(pattern).type().name();
        if (type.startsWith(FactTypes.ATTRIBUTE + "/")) {
            return "";
        }
        long same = count(type, rule.patterns().size());
        return same > 1 ? word(type) + " " + count(type, pattern + 1) : word(type);
    }

    static String word(String type) {
        return Group.byFactType(type)
                .map(Group::label)
                .or(() -> Contact.byFactType(type)
                        .map(c -> "process " + c.preposition() + " " + c.group().label()))
                .orElseGet(() -> type.toLowerCase(Locale.ROOT));
    }

    private long count(String type, int upTo) {
        return rule.patterns().subList(0, upTo).stream()
                .filter(p -> p.type().name().equals(type))
                .count();
    }

    String the(int pattern) {
        String thing = thing(pattern);
        boolean numbered = thing.matches(".* [0-9]+");
        return numbered ? thing : "the " + (thing.isEmpty() ? "answer" : thing);
    }

    /** The label of a field without naming again the thing it belongs to. */
    String label(int pattern, Field field) {
        String thing = " of the " + word(rule.patterns().get(pattern).type().name());
        return field.label().endsWith(thing)
                ? field.label().substring(0, field.label().length() - thing.length())
                : field.label();
    }
}

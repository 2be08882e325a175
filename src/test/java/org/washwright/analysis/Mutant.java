package org.washwright.analysis;

import java.util.Map;
import java.util.TreeMap;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;

/**
 * An edition with one fault put into it.
 *
 * @param fault what kind of fault
 * @param rule id of the rule with the fault
 * @param what what was done, in words
 * @param texts files of the faulty edition by name
 */
record Mutant(Fault fault, String rule, String what, Map<String, String> texts) {

    /** File that holds the faulty rule. */
    static final String FILE = "rules/faulty.drl";

    /** The edition with other text in the place of a rule. */
    static Mutant of(Fault fault, Rule rule, String what, Map<String, String> clean, String text) {
        Map<String, String> texts = without(rule, clean);
        texts.put(FILE, "package faulty;\n\n" + text);
        return new Mutant(fault, rule.id(), what, texts);
    }

    /** The edition with another rule in the place of one. */
    static Mutant of(Fault fault, Rule rule, Rule faulty, String what, Map<String, String> clean) {
        return of(fault, rule, what, clean, RuleText.readable(faulty));
    }

    private static Map<String, String> without(Rule rule, Map<String, String> clean) {
        Map<String, String> texts = new TreeMap<>(clean);
        String file = rule.place().file();
        String[] lines = texts.get(file).split("\n", -1);
        int first = rule.place().line() - 1;
        int last = first;
        while (file.startsWith("rules/") && !lines[last].strip().equals("end")) {
            last++;
        }
        StringBuilder rest = new StringBuilder();
        for (int i = 0; i < lines.length; i++) {
            rest.append(i >= first && i <= last ? "" : lines[i]).append('\n');
        }
        texts.put(file, rest.toString());
        return texts;
    }
}

package org.washwright.explain.exercise;

import java.util.List;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;

/** What a rule is called where one chooses among rules. */
final class RuleName {

    private RuleName() {}

    /** Its title; rows of a table share theirs, so that of a row is followed by the reason that it gives. */
    static String of(Edition edition, Rule rule) {
        String row = ": " + rule.id();
        if (!rule.title().endsWith(row)) {
            return rule.title();
        }
        String table = rule.title().substring(0, rule.title().length() - row.length());
        List<RuleSentence.Said> said = RuleSentence.of(edition, rule).then();
        return said.isEmpty() ? rule.title() : table + ": " + said.get(0).because();
    }
}

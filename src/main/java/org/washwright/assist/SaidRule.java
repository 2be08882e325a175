package org.washwright.assist;

import java.util.List;
import org.washwright.rule.RuleSentence;

/**
 * What a rule of a file says.
 *
 * @param id its id
 * @param title its title
 * @param from line where it starts
 * @param to line before which the next one starts; past the end of the file for the last
 * @param basis where it comes from
 * @param sources what it cites, in words
 * @param note remark of its author
 * @param sentence the rule as one would say it
 */
public record SaidRule(
        String id,
        String title,
        int from,
        int to,
        String basis,
        List<String> sources,
        String note,
        RuleSentence sentence) {}

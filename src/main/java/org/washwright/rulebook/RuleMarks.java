package org.washwright.rulebook;

import java.util.Map;
import java.util.UUID;

/** What readers of answers hold against rules; told by the feature that keeps their marks. */
public interface RuleMarks {

    /** How many open marks stand against each rule, by its id; rules without any are left out. */
    Map<String, Integer> openByRule(UUID workspace);
}

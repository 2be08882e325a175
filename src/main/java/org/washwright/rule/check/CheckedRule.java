package org.washwright.rule.check;

import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.rule.Rule;

/**
 * A rule that was checked alone.
 *
 * @param rule the rule, unless there was an error
 * @param found what was found; nobody adds to it
 */
public record CheckedRule(Optional<Rule> rule, Diagnostics found) {}

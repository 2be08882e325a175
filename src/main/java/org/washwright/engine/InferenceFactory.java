package org.washwright.engine;

import java.util.List;
import java.util.Map;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;

/** Makes rules ready to run. */
public interface InferenceFactory {

    /**
     * Prepares rules.
     *
     * @param rules rules of one edition
     * @param levels level of each rule, by id
     * @param types fact types of the edition
     */
    Inference prepare(List<Rule> rules, Map<String, Integer> levels, FactTypes types);
}

package org.washwright.coverage;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.analysis.TestWords;
import org.washwright.rule.Edition;

/**
 * How a set of tasks exercised the rules of an edition.
 *
 * @param tasks number of tasks
 * @param rules each rule in order of its id
 */
public record Coverage(int tasks, List<RuleCoverage> rules) {

    /** Keeps a copy. */
    public Coverage {
        rules = List.copyOf(rules);
    }

    /** Rules that fired on at least one task. */
    public long fired() {
        return rules.stream().filter(r -> r.fired() > 0).count();
    }

    /** Rules that one change held back. */
    public long heldBack() {
        return rules.stream().filter(r -> r.heldBack().isPresent()).count();
    }

    /** Rules that read nothing but processes, so that no task can hold them back. */
    public long readingProcessesAlone() {
        return rules.stream().filter(RuleCoverage::readsProcessesAlone).count();
    }

    /** Comparisons in all. */
    public long tests() {
        return rules.stream().mapToLong(r -> r.tests().size()).sum();
    }

    /** Comparisons that were seen both true and false. */
    public long bothWays() {
        return rules.stream()
                .flatMap(r -> r.tests().stream())
                .filter(t -> t.missing().isEmpty())
                .count();
    }

    /** As plain data for programs. */
    public Map<String, Object> asData(Edition edition) {
        Map<String, Object> out = new TreeMap<>();
        out.put("tasks", tasks);
        out.put("rulesFired", fired());
        out.put("rulesHeldBack", heldBack());
        out.put("rulesOnProcessesAlone", readingProcessesAlone());
        out.put("conditions", tests());
        out.put("conditionsBothWays", bothWays());
        out.put("rules", rules.stream().map(r -> rule(r, edition)).toList());
        return out;
    }

    private static Map<String, Object> rule(RuleCoverage r, Edition edition) {
        Map<String, Object> one = new TreeMap<>();
        one.put("rule", r.rule().id());
        one.put("fired", r.fired());
        one.put("undecided", r.undecided());
        one.put("failed", r.failed());
        r.heldBack().ifPresent(pair -> one.put("heldBack", Map.of("fires", pair.fires(), "silent", pair.silent())));
        one.put(
                "conditions",
                r.tests().stream()
                        .map(t -> Map.of(
                                "pattern", t.pattern() + 1,
                                "condition", TestWords.of(t.test(), edition),
                                "true", t.yes(),
                                "false", t.no(),
                                "undecided", t.open(),
                                "missing", t.missing()))
                        .toList());
        return one;
    }
}

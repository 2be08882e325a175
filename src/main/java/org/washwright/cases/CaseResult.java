package org.washwright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostic;

/**
 * What came of running a case.
 *
 * @param reference the case
 * @param checks each expectation and whether it is met, in the order written; empty when the task was refused
 * @param refused what is wrong with the task by this edition
 */
public record CaseResult(Case reference, List<Check> checks, List<Diagnostic> refused) {

    /**
     * One expectation and what was found.
     *
     * @param expectation what was expected
     * @param expected the same in words
     * @param met whether it holds
     * @param found what was found instead, and why; empty when it is met
     */
    public record Check(Expectation expectation, String expected, boolean met, String found) {}

    /** Keeps copies. */
    public CaseResult {
        checks = List.copyOf(checks);
        refused = List.copyOf(refused);
    }

    /** True when every expectation is met. */
    public boolean holds() {
        return refused.isEmpty() && checks.stream().allMatch(Check::met);
    }

    /** Expectations that are not met. */
    public List<Check> unmet() {
        return checks.stream().filter(c -> !c.met()).toList();
    }

    /** As plain data for programs. */
    public Map<String, Object> asData() {
        Map<String, Object> out = new TreeMap<>();
        out.put("id", reference.id());
        out.put("title", reference.title());
        out.put("basis", reference.basis().word());
        out.put("place", reference.place().toString());
        out.put("holds", holds());
        List<Object> all = new ArrayList<>();
        checks.forEach(c -> all.add(Map.of(
                "expected",
                c.expected(),
                "met",
                c.met(),
                "found",
                c.found(),
                "place",
                c.expectation().place().toString(),
                "rules",
                c.expectation().rules())));
        out.put("expectations", all);
        out.put("refused", refused.stream().map(Diagnostic::asData).toList());
        return out;
    }
}

package org.washwright.analysis;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.rule.Edition;
import org.washwright.task.TaskWriter;

/**
 * What came of looking at the rules of an edition.
 *
 * @param findings what is wrong or worth a look, accepted findings last
 * @param examples examples of each rule by its id, the first one a task on which it fires
 * @param budget most tasks tried for one question
 */
public record Examination(List<Finding> findings, Map<String, List<Example>> examples, int budget) {

    /** Keeps ordered copies. */
    public Examination {
        findings = List.copyOf(findings);
        examples = java.util.Collections.unmodifiableMap(new TreeMap<>(examples));
    }

    /** Findings that nobody has accepted. */
    public List<Finding> open() {
        return findings.stream().filter(f -> f.accepted().isEmpty()).toList();
    }

    /** As plain data for programs. */
    public Map<String, Object> asData(Edition edition) {
        Map<String, Object> out = new TreeMap<>();
        out.put("tries", budget);
        out.put("findings", findings.stream().map(f -> finding(f, edition)).toList());
        Map<String, Object> rules = new TreeMap<>();
        examples.forEach((id, list) ->
                rules.put(id, list.stream().map(e -> example(e, edition)).toList()));
        out.put("examples", rules);
        return out;
    }

    private static Map<String, Object> finding(Finding f, Edition edition) {
        Map<String, Object> one = new TreeMap<>();
        one.put("finding", f.kind().word());
        one.put("rules", f.rules());
        one.put("place", f.place().toString());
        one.put("words", f.words());
        f.accepted().ifPresent(why -> one.put("accepted", why));
        f.witness().ifPresent(task -> {
            one.put("witness", TaskWriter.data(task, edition));
            one.put("asOf", f.asOf());
        });
        return one;
    }

    private static Map<String, Object> example(Example e, Edition edition) {
        Map<String, Object> one = new TreeMap<>();
        one.put("fires", e.fires());
        one.put("words", e.words());
        e.test().ifPresent(t -> one.put("condition", TestWords.of(t, edition)));
        one.put("task", TaskWriter.data(e.task(), edition));
        return one;
    }
}
